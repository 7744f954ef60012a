import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { markedRides } from './markedRides';

/**
 * How many laps of each ride still ask what they were; rides without such a lap are not in the map. They do
 * not hold the ride back: its kilometres and events count all the same.
 */
export function openMarks(ledger: Ledger): ReadonlyMap<number, number> {
	return remember(ledger, 'open marks', () => {
		const open = new Map<number, number>();
		for (const [rideId, { marks }] of markedRides(ledger)) {
			const count = marks.filter(({ event, answer }) => !event && !answer).length;
			if (count > 0) open.set(rideId, count);
		}
		return open;
	});
}
