import { REFERENCE_SLIP_CRANK_DEG } from '$lib/slip/analysis';
import type { Ledger } from '../ledger/openLedger';
import { rememberRides } from '../ledger/rememberRides';
import { currentVersion } from '../queue/analysisVersions';
import { RideBlocks } from '../rides/rideBlocks';

/** How the events of one ride stand. The first three are those that the rate is about. */
export interface EventTally {
	readonly confirmed: number;
	readonly unreviewed: number;
	readonly rejected: number;
	/** smaller than the reference slip, on an unobserved stretch, or of another kind */
	readonly apart: number;
	/** all events without a verdict, whether the rate is about them or not */
	readonly withoutVerdict: number;
}

export const NO_EVENTS: EventTally = {
	confirmed: 0,
	unreviewed: 0,
	rejected: 0,
	apart: 0,
	withoutVerdict: 0
};

/**
 * The rate is about slips of at least the reference size that begin on an observed stretch: SQL for it,
 * on slip_event as e. The one place that says so.
 */
export const IN_THE_RATE = `(e.kind = 'slip' AND e.observed = 1
	AND e.overrun_crank_deg >= ${REFERENCE_SLIP_CRANK_DEG})`;

/**
 * Tallies by ride for the current analysis version; rides without events have none.
 *
 * @param rideIds only of these; of all when not given
 */
export function eventTallies(
	ledger: Ledger,
	rideIds?: readonly number[]
): Pick<ReadonlyMap<number, EventTally>, 'get'> {
	if (rideIds !== undefined) return readTallies(ledger, rideIds);
	return rememberRides(ledger, 'tallies', {
		all: () => RideBlocks.of(readTallies(ledger)),
		anew: (before: RideBlocks<EventTally>, touched) => before.anew(touched, readTallies(ledger, touched))
	});
}

/** The tally of one ride between two seconds: from <= start of the event < to. */
export function readPartTallies(
	ledger: Ledger,
	part: { id: number; fromS: number; toS: number }
): EventTally | undefined {
	return readTallies(ledger, [part.id], part).get(part.id);
}

function readTallies(
	ledger: Ledger,
	rideIds?: readonly number[],
	between = { fromS: -Infinity, toS: Infinity }
): Map<number, EventTally> {
	const only = rideIds
		? 'AND e.ride_id IN (SELECT value FROM json_each(@rideIds)) AND e.start_s >= @fromS AND e.start_s < @toS'
		: '';
	const rows = ledger.database
		.prepare<[object], EventTally & { rideId: number }>(
			`SELECT e.ride_id AS rideId,
				sum(${IN_THE_RATE} AND v.verdict IS 'confirmed') AS confirmed,
				sum(${IN_THE_RATE} AND v.id IS NULL) AS unreviewed,
				sum(${IN_THE_RATE} AND v.verdict IS 'rejected') AS rejected,
				sum(NOT ${IN_THE_RATE}) AS apart,
				sum(v.id IS NULL) AS withoutVerdict
			FROM slip_event e LEFT JOIN verdict v ON v.id = e.verdict_id
			WHERE e.version = @version ${only} GROUP BY e.ride_id`
		)
		.all({
			version: currentVersion(ledger),
			rideIds: JSON.stringify(rideIds ?? []),
			fromS: between.fromS,
			toS: between.toS
		});
	return new Map(
		rows.map(({ rideId, confirmed, unreviewed, rejected, apart, withoutVerdict }) => [
			rideId,
			{ confirmed, unreviewed, rejected, apart, withoutVerdict }
		])
	);
}
