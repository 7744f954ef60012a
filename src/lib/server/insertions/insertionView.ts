import { shareLimits } from '$lib/reliability/shareLimits';
import { REFERENCE_SLIP_CRANK_DEG } from '$lib/slip/analysis';
import { HUB_TORQUE_EDGES_NM } from '$lib/slip/hubTorqueBins';
import { INSERTION_PLACES, type InsertionPlace } from '$lib/slip/insertionPlaces';
import type { Ledger } from '../ledger/openLedger';
import { MOST_ATTEMPTS } from '../queue/importQueue';
import { halfFound, type HalfFound } from './halfFound';

/** How many of the slips that were put in were found, with exact limits. */
export interface FoundShare {
	put: number;
	found: number;
	/** null when none was put in */
	share: number | null;
	lower: number;
	upper: number;
}

export interface InsertionView {
	version: number;
	passes: number;
	put: number;
	/** by size in crank degrees, on observed stretches and elsewhere */
	sizes: { crankDeg: number; observed: FoundShare; elsewhere: FoundShare }[];
	/** the size of which half are found on observed stretches; null where the slips do not tell */
	halfFound: HalfFound | null;
	/** slips of the reference size and more, by place and by hub torque (null = not known) */
	places: { place: InsertionPlace; observed: FoundShare; elsewhere: FoundShare }[];
	torques: { fromNm: number | null; toNm: number | null; observed: FoundShare; elsewhere: FoundShare }[];
	/** of the limits */
	confidence: number;
	/** largest difference of observed metres between a pass and the ride itself */
	observedChangeM: number;
}

export type InsertionStage =
	| { stage: 'done'; view: InsertionView }
	/** nothing could be put in, or it failed: why */
	| { stage: 'none'; reason: string }
	| { stage: 'to come' };

interface TallyRow {
	crankDeg: number;
	place: InsertionPlace;
	torqueFromNm: number | null;
	observed: number;
	put: number;
	found: number;
}

const CONFIDENCE = 0.95;

/** What became of the slips put into a ride, by one version of the analysis; null when it has no result. */
export function insertionStage(ledger: Ledger, rideId: number, version: number): InsertionStage | null {
	const row = ledger.database
		.prepare<[number, number], { passes: number; put: number; notRun: string | null; changeM: number }>(
			`SELECT passes, put, not_run AS notRun, observed_change_m AS changeM
			FROM insertion_test WHERE ride_id = ? AND version = ?`
		)
		.get(rideId, version);
	if (row?.notRun) return { stage: 'none', reason: row.notRun };
	if (row) return { stage: 'done', view: viewOf(readTallies(ledger, rideId, version), { version, ...row }) };
	const given = ledger.database
		.prepare<[number, number], { failure: string | null; attempts: number }>(
			`SELECT a.failure, coalesce(a.attempts, 0) AS attempts FROM result s
			LEFT JOIN insertion_attempt a ON a.ride_id = s.ride_id AND a.version = s.version
			WHERE s.ride_id = ? AND s.version = ?`
		)
		.get(rideId, version);
	if (!given) return null;
	if (given.failure === null && given.attempts < MOST_ATTEMPTS) return { stage: 'to come' };
	return { stage: 'none', reason: given.failure ?? 'it broke off again and again' };
}

function readTallies(ledger: Ledger, rideId: number, version: number): TallyRow[] {
	return ledger.database
		.prepare<[number, number], TallyRow>(
			`SELECT size_crank_deg AS crankDeg, place, torque_from_nm AS torqueFromNm, observed, put, found
			FROM insertion_tally WHERE ride_id = ? AND version = ? ORDER BY tally`
		)
		.all(rideId, version);
}

function viewOf(
	tallies: readonly TallyRow[],
	test: { version: number; passes: number; put: number; changeM: number }
): InsertionView {
	const large = tallies.filter(({ crankDeg }) => crankDeg >= REFERENCE_SLIP_CRANK_DEG);
	const sizes = [...new Set(tallies.map(({ crankDeg }) => crankDeg))]
		.sort((a, b) => a - b)
		.map((crankDeg) => ({ crankDeg, ...bothOf(tallies.filter((row) => row.crankDeg === crankDeg)) }));
	const torques = [...new Set(large.map(({ torqueFromNm }) => torqueFromNm))];
	// what is not known comes last
	torques.sort((a, b) => (a ?? Infinity) - (b ?? Infinity));
	return {
		version: test.version,
		passes: test.passes,
		put: test.put,
		sizes,
		halfFound: halfFound(
			sizes.map(({ crankDeg, observed }) => ({ crankDeg, ...observed })),
			CONFIDENCE
		),
		places: INSERTION_PLACES.map((place) => ({
			place,
			...bothOf(large.filter((row) => row.place === place))
		})),
		torques: torques.map((fromNm) => ({
			fromNm,
			toNm: fromNm === null ? null : (HUB_TORQUE_EDGES_NM.find((edge) => edge > fromNm) ?? null),
			...bothOf(large.filter((row) => row.torqueFromNm === fromNm))
		})),
		confidence: CONFIDENCE,
		observedChangeM: test.changeM
	};
}

function bothOf(rows: readonly TallyRow[]): { observed: FoundShare; elsewhere: FoundShare } {
	return {
		observed: shareOf(rows.filter(({ observed }) => observed === 1)),
		elsewhere: shareOf(rows.filter(({ observed }) => observed === 0))
	};
}

function shareOf(rows: readonly TallyRow[]): FoundShare {
	const put = rows.reduce((sum, row) => sum + row.put, 0);
	const found = rows.reduce((sum, row) => sum + row.found, 0);
	const { share, lower, upper } = shareLimits(found, put, CONFIDENCE);
	return { put, found, share: put > 0 ? share : null, lower, upper };
}
