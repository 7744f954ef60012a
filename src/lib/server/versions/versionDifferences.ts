import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { currentVersion } from '../queue/analysisVersions';
import { IN_THE_RATE } from '../rates/eventTallies';
import { programmeRows } from '../rates/programmeRows';
import { LedgerRefusal } from '../refusal';
import type { BuildRow, Instant } from '../views';
import { eventDifferences, type EventBrief, type EventDifference } from './eventDifferences';
import { asIfVersion } from './setVersion';
import { verdictsOf, type LostVerdict } from './unmatchedVerdicts';
import { versionState } from './versionState';

/** A ride that both versions have read. */
export interface RideDifference {
	rideId: number;
	fileName: string;
	startedAt: Instant;
	localOffsetMin: number | null;
	/** verdicts that stand on it */
	verdicts: number;
	observedM: { before: number; after: number };
	events: EventDifference[];
}

export interface DifferenceCounts {
	/** rides that both versions have read */
	rides: number;
	/** rides that only the one or only the other has read */
	onlyBefore: number;
	onlyAfter: number;
	/** of the rides that both have read */
	events: { before: number; after: number };
	inRate: { before: number; after: number };
	totalM: { before: number; after: number };
	observedM: { before: number; after: number };
	appeared: number;
	vanished: number;
	changed: number;
}

export interface VersionDifferences {
	before: number;
	after: number;
	/** rides with verdicts, those with differences; the newest first */
	reviewed: RideDifference[];
	reviewedRides: number;
	/** of the reviewed rides alone */
	onReviewed: DifferenceCounts;
	onAll: DifferenceCounts;
	/** further rides with differences, at most so many, the newest first */
	others: RideDifference[];
	lostVerdicts: LostVerdict[];
	builds: { id: number; name: string; before: BuildRow; after: BuildRow }[];
}

interface RideRow {
	rideId: number;
	fileName: string;
	startMs: number;
	localOffsetS: number | null;
	verdicts: number;
	totalBeforeM: number | null;
	totalAfterM: number | null;
	observedBeforeM: number | null;
	observedAfterM: number | null;
}

const MOST_OTHERS = 100;

/**
 * What would become different if another version of the analysis were the current one: on reviewed rides first,
 * over all rides, and for each build. The ledger is as it was afterwards.
 *
 * @throws LedgerRefusal not-found when no results of that version are kept
 */
export function versionDifferences(ledger: Ledger, after: number): VersionDifferences {
	if (!versionState(ledger).kept.some(({ version }) => version === after))
		throw new LedgerRefusal('not-found', `No results of version ${after} are kept.`);
	return remember(ledger, `version differences to ${after}`, () => compare(ledger, after));
}

function compare(ledger: Ledger, after: number): VersionDifferences {
	const before = currentVersion(ledger);
	const rows = readRides(ledger, before, after);
	const eventsBefore = readEvents(ledger, before);
	const rowsBefore = programmeRows(ledger);
	const foretold = asIfVersion(ledger, after, (lost) => ({
		events: readEvents(ledger, after),
		builds: programmeRows(ledger),
		lostVerdicts: verdictsOf(ledger, lost)
	}));
	const rides = rows.map((row) => ({
		row,
		before: eventsBefore.get(row.rideId) ?? [],
		after: foretold.events.get(row.rideId) ?? []
	}));
	const both = rides.filter(({ row }) => row.totalBeforeM !== null && row.totalAfterM !== null);
	const differing = both
		.map((ride) => ({ ...ride, difference: differenceOf(ride) }))
		.filter(isDifferent)
		.reverse();
	const ofReview = differing.filter(({ row }) => row.verdicts > 0).map(({ difference }) => difference);
	const others = differing.filter(({ row }) => row.verdicts === 0).map(({ difference }) => difference);
	return {
		before,
		after,
		reviewed: ofReview,
		reviewedRides: both.filter(({ row }) => row.verdicts > 0).length,
		onReviewed: countsOf(rides.filter(({ row }) => row.verdicts > 0)),
		onAll: countsOf(rides),
		others: others.slice(0, MOST_OTHERS),
		lostVerdicts: foretold.lostVerdicts,
		builds: rowsBefore.flatMap((build) => {
			const then = foretold.builds.find(({ id }) => id === build.id);
			return then ? [{ id: build.id, name: build.name, before: build, after: then }] : [];
		})
	};
}

interface ComparedRide {
	readonly row: RideRow;
	readonly before: readonly EventBrief[];
	readonly after: readonly EventBrief[];
}

function differenceOf({ row, before, after }: ComparedRide): RideDifference {
	return {
		rideId: row.rideId,
		fileName: row.fileName,
		startedAt: toInstant(row.startMs),
		localOffsetMin: row.localOffsetS === null ? null : Math.round(row.localOffsetS / 60),
		verdicts: row.verdicts,
		observedM: { before: row.observedBeforeM ?? 0, after: row.observedAfterM ?? 0 },
		events: eventDifferences(before, after)
	};
}

/** Observed distance is a difference from one hundredth of the ride on. */
function isDifferent({ row, difference }: { row: RideRow; difference: RideDifference }): boolean {
	const movedM = Math.abs(difference.observedM.after - difference.observedM.before);
	return (
		difference.events.length > 0 || movedM > 0.01 * Math.max(row.totalBeforeM ?? 0, row.totalAfterM ?? 0)
	);
}

function countsOf(rides: readonly ComparedRide[]): DifferenceCounts {
	const both = rides.filter(({ row }) => row.totalBeforeM !== null && row.totalAfterM !== null);
	const differences = both.flatMap(({ before, after }) => eventDifferences(before, after));
	const sum = (pick: (ride: ComparedRide) => number) => both.reduce((total, ride) => total + pick(ride), 0);
	const inRate = (events: readonly EventBrief[]) => events.filter((event) => event.inRate).length;
	const are = (what: EventDifference['what']) => differences.filter((one) => one.what === what).length;
	return {
		rides: both.length,
		onlyBefore: rides.filter(({ row }) => row.totalBeforeM !== null && row.totalAfterM === null).length,
		onlyAfter: rides.filter(({ row }) => row.totalBeforeM === null && row.totalAfterM !== null).length,
		events: { before: sum(({ before }) => before.length), after: sum(({ after }) => after.length) },
		inRate: { before: sum(({ before }) => inRate(before)), after: sum(({ after }) => inRate(after)) },
		totalM: { before: sum(({ row }) => row.totalBeforeM!), after: sum(({ row }) => row.totalAfterM!) },
		observedM: {
			before: sum(({ row }) => row.observedBeforeM!),
			after: sum(({ row }) => row.observedAfterM!)
		},
		appeared: are('appeared'),
		vanished: are('vanished'),
		changed: are('changed')
	};
}

function readRides(ledger: Ledger, before: number, after: number): RideRow[] {
	return ledger.database
		.prepare<[object], RideRow>(
			`SELECT r.id AS rideId, r.file_name AS fileName, r.started_ms AS startMs,
				r.local_offset_s AS localOffsetS, b.total_m AS totalBeforeM, a.total_m AS totalAfterM,
				b.observed_m AS observedBeforeM, a.observed_m AS observedAfterM,
				(SELECT count(*) FROM verdict v WHERE v.ride_id = r.id AND v.superseded_ms IS NULL) AS verdicts
			FROM ride r LEFT JOIN result b ON b.ride_id = r.id AND b.version = @before
			LEFT JOIN result a ON a.ride_id = r.id AND a.version = @after
			WHERE r.withdrawn_ms IS NULL ORDER BY r.started_ms, r.id`
		)
		.all({ before, after });
}

function readEvents(ledger: Ledger, version: number): ReadonlyMap<number, EventBrief[]> {
	const rows = ledger.database
		.prepare<[number], Omit<EventBrief, 'inRate'> & { rideId: number; inRate: number }>(
			`SELECT e.id, e.ride_id AS rideId, r.started_ms + 1000 * e.start_s AS startMs,
				r.started_ms + 1000 * e.end_s AS endMs, e.start_s AS startS, e.kind,
				e.overrun_crank_deg AS crankDeg, e.overrun_crank_lower_deg AS crankLowerDeg,
				e.overrun_crank_upper_deg AS crankUpperDeg, e.strength, ${IN_THE_RATE} AS inRate, v.verdict
			FROM slip_event e JOIN ride r ON r.id = e.ride_id LEFT JOIN verdict v ON v.id = e.verdict_id
			WHERE e.version = ? ORDER BY e.ride_id, e.start_s, e.id`
		)
		.all(version);
	const byRide = new Map<number, EventBrief[]>();
	for (const { rideId, ...event } of rows) {
		const ofRide = byRide.get(rideId);
		const brief = { ...event, inRate: event.inRate === 1 };
		if (ofRide) ofRide.push(brief);
		else byRide.set(rideId, [brief]);
	}
	return byRide;
}
