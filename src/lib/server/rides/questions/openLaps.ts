import type { Ledger } from '../../ledger/openLedger';
import { riderMarks } from '../../marks/riderMarks';
import { currentVersion } from '../../queue/analysisVersions';
import { rideEvents } from '../rideEvents';
import type { RideFacts } from '../rideFacts';

/** The laps of a ride that mean slips, have no event and are not answered, seconds from the first record. */
export function openLaps(ledger: Ledger, ride: RideFacts): number[] {
	const events = rideEvents(ledger, ride, currentVersion(ledger), () => null);
	const { lapsMeanSlips, marks } = riderMarks(ledger, ride, events);
	if (!lapsMeanSlips) return [];
	return marks.filter(({ event, answer }) => !event && !answer).map(({ timeS }) => timeS);
}
