import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { currentVersion } from '../queue/analysisVersions';
import type { StoredAnswer } from './markAnswers';
import { byRide, type OfRide } from '../rides/byRide';
import { matchedMarks, type MarkedEvent, type StoredMark } from './matchedMarks';

const SAID = '(SELECT id FROM ride WHERE laps_mean_slips = 1 AND withdrawn_ms IS NULL)';

/**
 * How many laps of each ride still ask what they were; rides without such a lap are not in the map. They do
 * not hold the ride back: its kilometres and events count all the same.
 */
export function openMarks(ledger: Ledger): ReadonlyMap<number, number> {
	return remember(ledger, 'open marks', () => countOpen(ledger));
}

function countOpen(ledger: Ledger): Map<number, number> {
	const { database } = ledger;
	const version = currentVersion(ledger);
	const events = byRide(
		database
			.prepare<[number], OfRide & MarkedEvent>(
				`SELECT e.ride_id AS rideId, e.id, e.start_s AS startS, v.verdict
				FROM slip_event e LEFT JOIN verdict v ON v.id = e.verdict_id
				WHERE e.version = ? AND e.ride_id IN ${SAID}`
			)
			.all(version)
	);
	const answers = byRide(
		database
			.prepare<[], OfRide & StoredAnswer>(
				`SELECT ride_id AS rideId, mark_ms AS markMs, answer, '' AS byCode, at_ms AS atMs
				FROM rider_mark_answer WHERE superseded_ms IS NULL`
			)
			.all()
	);
	const marks = byRide(
		database
			.prepare<[number], OfRide & StoredMark & { startMs: number }>(
				`SELECT m.ride_id AS rideId, m.time_s AS timeS, m.observed, r.started_ms AS startMs
				FROM rider_mark m JOIN ride r ON r.id = m.ride_id WHERE m.version = ? AND m.ride_id IN ${SAID}
				ORDER BY m.ride_id, m.time_s`
			)
			.all(version)
	);
	const open = new Map<number, number>();
	for (const [rideId, ofRide] of marks) {
		const joined = matchedMarks(
			ofRide[0].startMs,
			ofRide,
			events.get(rideId) ?? [],
			answers.get(rideId) ?? []
		);
		const count = joined.filter(({ event, answer }) => !event && !answer).length;
		if (count > 0) open.set(rideId, count);
	}
	return open;
}
