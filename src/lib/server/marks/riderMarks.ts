import { REFERENCE_SLIP_CRANK_DEG } from '$lib/slip/analysis';
import { riderMarkCounts } from '$lib/slip/riderMarkCounts';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import type { EventView, RiderMarksView, RiderMarkView } from '../views';
import { readAnswers } from './markAnswers';
import { matchedMarks, type StoredMark } from './matchedMarks';

/**
 * The laps of a ride, what the rider says of them, and what they are taken to mean. Laps are held against
 * events only on rides whose rider says that they mean slips.
 *
 * @param events of the same ride in the current analysis version
 */
export function riderMarks(
	ledger: Ledger,
	ride: { id: number; startMs: number },
	events: readonly EventView[]
): RiderMarksView {
	const meaning = lapsMeanSlips(ledger, ride.id);
	const mean = meaning === true;
	const marks = matchedMarks(
		ride.startMs,
		storedMarks(ledger, ride.id),
		mean ? events.map(({ id, startS, verdict }) => ({ id, startS, verdict: verdict?.verdict ?? null })) : [],
		readAnswers(ledger, ride.id)
	);
	return {
		lapsMeanSlips: meaning,
		marks,
		open: mean ? marks.filter(({ event, answer }) => !event && !answer).length : 0,
		counts: mean ? countsOf(marks, events) : null
	};
}

function countsOf(marks: readonly RiderMarkView[], events: readonly EventView[]) {
	return riderMarkCounts(
		marks.map(({ observed, answer, event }) => ({
			observed,
			answer: answer?.answer ?? null,
			event: event ? events.findIndex(({ id }) => id === event.id) : null
		})),
		events.map(({ kind, observed, overrunCrankDeg, verdict }) => ({
			inRate: kind === 'slip' && observed && overrunCrankDeg.value >= REFERENCE_SLIP_CRANK_DEG,
			verdict: verdict?.verdict ?? null
		}))
	);
}

function lapsMeanSlips(ledger: Ledger, rideId: number): boolean | null {
	const row = ledger.database
		.prepare<[number], { said: number | null }>('SELECT laps_mean_slips AS said FROM ride WHERE id = ?')
		.get(rideId);
	return row?.said == null ? null : row.said === 1;
}

function storedMarks(ledger: Ledger, rideId: number): StoredMark[] {
	return ledger.database
		.prepare<[number, number], StoredMark>(
			'SELECT time_s AS timeS, observed FROM rider_mark WHERE ride_id = ? AND version = ? ORDER BY time_s'
		)
		.all(rideId, currentVersion(ledger));
}
