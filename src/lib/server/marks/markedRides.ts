import type { Ledger } from '../ledger/openLedger';
import { rememberRides } from '../ledger/rememberRides';
import { currentVersion } from '../queue/analysisVersions';
import { IN_THE_RATE } from '../rates/eventTallies';
import { byRide, type OfRide } from '../rides/byRide';
import { withRidesAnew } from '../rides/withRidesAnew';
import type { RiderMarkView } from '../views';
import type { StoredAnswer } from './markAnswers';
import { matchedMarks, type MarkedEvent, type StoredMark } from './matchedMarks';

/** A ride whose rider said that laps mean slips, with what each lap is taken to mean. */
export interface MarkedRide {
	readonly marks: readonly RiderMarkView[];
	/** all events, also those that no rate is about */
	readonly events: readonly (MarkedEvent & { readonly inRate: boolean })[];
}

/** Of all rides, or of those asked for: these are found by their number, and no other ride is looked at. */
const said = (only: boolean) => `(SELECT id FROM ride WHERE
	${only ? 'id IN (SELECT value FROM json_each(@only)) AND' : ''} laps_mean_slips = 1 AND withdrawn_ms IS NULL)`;

/** Every ride whose laps mean slips, by the current version of the analysis; withdrawn ones are not there. */
export function markedRides(ledger: Ledger): ReadonlyMap<number, MarkedRide> {
	return rememberRides<ReadonlyMap<number, MarkedRide>>(ledger, 'marked rides', {
		all: () => read(ledger),
		anew: (before, touched) => withRidesAnew(before, touched, read(ledger, touched))
	});
}

function read(ledger: Ledger, rideIds?: readonly number[]): Map<number, MarkedRide> {
	const { database } = ledger;
	const asked = { version: currentVersion(ledger), only: rideIds ? JSON.stringify(rideIds) : null };
	const { only } = asked;
	const SAID = said(only !== null);
	const events = byRide(
		database
			.prepare<[object], OfRide & MarkedEvent & { inRate: number }>(
				`SELECT e.ride_id AS rideId, e.id, e.start_s AS startS, v.verdict, ${IN_THE_RATE} AS inRate
				FROM slip_event e LEFT JOIN verdict v ON v.id = e.verdict_id
				WHERE e.version = @version AND e.ride_id IN ${SAID} ORDER BY e.ride_id, e.start_s, e.id`
			)
			.all(asked)
	);
	const answers = byRide(
		database
			.prepare<[object], OfRide & StoredAnswer>(
				`SELECT ride_id AS rideId, mark_ms AS markMs, answer, '' AS byCode, at_ms AS atMs
				FROM rider_mark_answer WHERE superseded_ms IS NULL AND ride_id IN ${SAID}`
			)
			.all({ only })
	);
	const marks = byRide(
		database
			.prepare<[object], OfRide & StoredMark>(
				`SELECT ride_id AS rideId, time_s AS timeS, observed FROM rider_mark
				WHERE version = @version AND ride_id IN ${SAID} ORDER BY ride_id, time_s`
			)
			.all(asked)
	);
	const rides = database
		.prepare<[object], { id: number; startMs: number }>(
			`SELECT id, started_ms AS startMs FROM ride WHERE id IN ${SAID}`
		)
		.all({ only });
	return new Map(
		rides.map(({ id, startMs }) => {
			const ofRide = (events.get(id) ?? []).map((event) => ({ ...event, inRate: event.inRate === 1 }));
			return [
				id,
				{
					marks: matchedMarks(startMs, marks.get(id) ?? [], ofRide, answers.get(id) ?? []),
					events: ofRide
				}
			];
		})
	);
}
