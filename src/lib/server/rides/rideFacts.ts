import { buildOfRide, type BuildOfRide, type FittedPeriod } from '$lib/hardware/buildOfRide';
import { ridePartBuilds, type RidePartBuild } from '$lib/hardware/ridePartBuilds';
import { clockLooksWrong } from '$lib/ride/clockLooksWrong';
import { listPeriods } from '../hardware/periodRows';
import type { Ledger } from '../ledger/openLedger';
import { rememberRides } from '../ledger/rememberRides';
import { currentVersion } from '../queue/analysisVersions';
import type { PartAmount } from './partAmounts';
import { readCuts, readParts } from './rideParts';
import { rideStanding, type Standing } from './rideStanding';
import type { Surface } from './surfaces';

interface StoredRide {
	id: number;
	sha256: string;
	fileName: string;
	startMs: number;
	/** what the recording said, once a person corrected or confirmed it; null = nobody did */
	recordedStartMs: number | null;
	/** when it became a ride */
	takenMs: number;
	durationS: number;
	localOffsetS: number | null;
	fileTrainer: number | null;
	/** what the file says */
	motorAssisted: number | null;
	/** a person's word; it wins over the file */
	motorSaid: number | null;
	trainer: number | null;
	wet: number | null;
	surface: Surface | null;
	loadKg: number | null;
	lapsMeanSlips: number | null;
	bikeId: number | null;
	wheelId: number | null;
	chosenBuildId: number | null;
	riderId: number | null;
	riderCode: string | null;
	twinId: number | null;
	twinFileName: string | null;
	twinDecision: 'same recording' | 'different ride' | null;
	withdrawnReason: string | null;
	example: number;
	analysed: number;
	analysisFailure: string | null;
	totalM: number;
	observedM: number;
	drivenM: number;
}

/** A part of a split ride with its build and, when they are known, its distances. */
export interface RidePart extends RidePartBuild {
	readonly amount: PartAmount | null;
}

/** A ride as the statistics see it: its summary, its build and whether it counts. No traces. */
export interface RideFacts extends StoredRide {
	readonly endMs: number;
	/** of a split ride: 'across a change'; its parts say more */
	readonly build: BuildOfRide;
	/** null while it is not known, and for a split ride */
	readonly buildId: number | null;
	/** two or more for a ride that a person split at a change of build; else none */
	readonly parts: readonly RidePart[];
	readonly standing: Standing;
	/** which part of a split ride is meant, 0 = the first; null = all of the ride. Of a part, instants, distances and build are its own */
	readonly part: number | null;
	/** seconds from the start of the ride: from <= event < to */
	readonly fromS: number;
	readonly toS: number;
	/** metres of the ride before this part */
	readonly fromM: number;
}

const SELECT = `SELECT r.id, r.sha256, r.file_name AS fileName, r.started_ms AS startMs,
	r.recorded_start_ms AS recordedStartMs, r.created_ms AS takenMs,
	r.duration_s AS durationS, r.local_offset_s AS localOffsetS, r.file_trainer AS fileTrainer,
	r.motor_assisted AS motorAssisted, r.motor_said AS motorSaid, r.trainer, r.wet, r.surface,
	r.load_kg AS loadKg, r.laps_mean_slips AS lapsMeanSlips, r.bike_id AS bikeId, r.wheel_id AS wheelId,
	r.chosen_build_id AS chosenBuildId, r.rider_id AS riderId, p.code AS riderCode,
	CASE WHEN t.withdrawn_ms IS NULL THEN t.id END AS twinId, t.file_name AS twinFileName,
	r.twin_decision AS twinDecision, r.withdrawn_reason AS withdrawnReason, r.example,
	s.ride_id IS NOT NULL AS analysed, d.failure AS analysisFailure, coalesce(s.total_m, 0) AS totalM,
	coalesce(s.observed_m, 0) AS observedM, coalesce(s.driven_m, 0) AS drivenM
	FROM ride r
	LEFT JOIN result s ON s.ride_id = r.id AND s.version = @version
	LEFT JOIN derivation d ON d.ride_id = r.id AND d.version = @version
	LEFT JOIN person p ON p.id = r.rider_id
	LEFT JOIN ride t ON t.id = r.twin_of`;

/** Whether a person has to say when it was; the invented rides keep their dates, whatever this machine's clock says. */
export function rideClockOdd(
	ride: Pick<StoredRide, 'startMs' | 'recordedStartMs' | 'takenMs' | 'example'>
): boolean {
	return ride.recordedStartMs === null && ride.example === 0 && clockLooksWrong(ride.startMs, ride.takenMs);
}

/** Every ride, or every one on a wheel, in order of its start. */
export function allRideFacts(ledger: Ledger, onWheelId?: number): readonly RideFacts[] {
	if (onWheelId !== undefined) return readFacts(ledger, onWheelId);
	return rememberRides<readonly RideFacts[]>(ledger, 'rides', {
		all: () => readFacts(ledger),
		anew: (before, rideIds) => readAnew(ledger, before, rideIds)
	});
}

/** rides of the newest list by their number: it goes with the list from change to change */
const listed = new WeakMap<readonly RideFacts[], Map<number, RideFacts>>();

/** Rides that did not change stay the same objects: what was made from them need not be made again. */
function readAnew(ledger: Ledger, before: readonly RideFacts[], touched: readonly number[]): RideFacts[] {
	// a copy is described with the ride that it is a copy of
	const copies = ledger.database
		.prepare<[string], { id: number }>(
			'SELECT id FROM ride WHERE twin_of IN (SELECT value FROM json_each(?))'
		)
		.all(JSON.stringify(touched));
	const ids = new Set([...touched, ...copies.map(({ id }) => id)]);
	const byId = listed.get(before) ?? new Map(before.map((ride) => [ride.id, ride]));
	const after = before.slice();
	for (const id of ids) {
		const old = byId.get(id);
		if (old) after.splice(placeOf(after, old), 1);
		byId.delete(id);
		const ride = rideFacts(ledger, id);
		if (!ride) continue;
		after.splice(placeOf(after, ride), 0, ride);
		byId.set(id, ride);
	}
	listed.delete(before);
	listed.set(after, byId);
	return after;
}

/** Where a ride stands in a list in order of start and number, or would stand. */
function placeOf(rides: readonly RideFacts[], { startMs, id }: RideFacts): number {
	let [from, to] = [0, rides.length];
	while (from < to) {
		const middle = (from + to) >> 1;
		const ride = rides[middle];
		if (ride.startMs < startMs || (ride.startMs === startMs && ride.id < id)) from = middle + 1;
		else to = middle;
	}
	return from;
}

function readFacts(ledger: Ledger, onWheelId?: number): RideFacts[] {
	const where = onWheelId === undefined ? '' : 'WHERE r.wheel_id = @onWheelId';
	const version = currentVersion(ledger);
	const rides = ledger.database
		.prepare<[object], StoredRide>(`${SELECT} ${where} ORDER BY r.started_ms, r.id`)
		.all({ version, onWheelId });
	return withBuilds(rides, listPeriods(ledger), readCuts(ledger), readParts(ledger, version));
}

/** One ride; null when there is no such ride. */
export function rideFacts(ledger: Ledger, rideId: number): RideFacts | null {
	const version = currentVersion(ledger);
	const rides = ledger.database
		.prepare<[{ version: number; rideId: number }], StoredRide>(`${SELECT} WHERE r.id = @rideId`)
		.all({ version, rideId });
	const [cuts, parts] = [readCuts(ledger, rideId), readParts(ledger, version, rideId)];
	return withBuilds(rides, listPeriods(ledger), cuts, parts)[0] ?? null;
}

function withBuilds(
	rides: readonly StoredRide[],
	periods: readonly FittedPeriod[],
	cuts: ReadonlyMap<number, readonly number[]>,
	amounts: ReadonlyMap<number, readonly PartAmount[]>
): RideFacts[] {
	const byWheel = new Map<number, FittedPeriod[]>();
	for (const period of periods) {
		const ofWheel = byWheel.get(period.wheelId);
		if (ofWheel) ofWheel.push(period);
		else byWheel.set(period.wheelId, [period]);
	}
	return rides.map((ride) => {
		const { wheelId, chosenBuildId, startMs } = ride;
		const endMs = startMs + ride.durationS * 1000;
		const onWheel = { wheelId, chosenBuildId, startMs, endMs };
		const fitted = byWheel.get(wheelId ?? -1) ?? [];
		const build = buildOfRide(onWheel, fitted);
		// whole where the periods were corrected so that one holds all of it, or a person chose a build
		const cutsMs = build.kind === 'across a change' ? (cuts.get(ride.id) ?? []) : [];
		const parts = cutsMs.length === 0 ? [] : partsOf(onWheel, cutsMs, fitted, amounts.get(ride.id));
		const standing = rideStanding({
			withdrawnReason: ride.withdrawnReason,
			build,
			parts,
			trainer: (ride.trainer ?? ride.fileTrainer) === 1,
			motorAssisted: (ride.motorSaid ?? ride.motorAssisted) === 1,
			twin: ride.twinId === null ? null : { fileName: ride.twinFileName ?? '', decision: ride.twinDecision },
			clockOdd: rideClockOdd(ride),
			analysed: ride.analysed === 1,
			analysisFailure: ride.analysisFailure
		});
		const buildId = build.kind === 'build' ? build.buildId : null;
		return factsOf(ride, { endMs, build, buildId, parts, standing });
	});
}

/**
 * Field by field, and all that a part of a ride says at once: a copy with something added (`{ ...ride, part }`) takes five
 * times the memory of such an object, and there are ten thousand of them.
 */
function factsOf(
	ride: StoredRide,
	found: Pick<RideFacts, 'endMs' | 'build' | 'buildId' | 'parts' | 'standing'>
): RideFacts {
	return {
		id: ride.id,
		sha256: ride.sha256,
		fileName: ride.fileName,
		startMs: ride.startMs,
		recordedStartMs: ride.recordedStartMs,
		takenMs: ride.takenMs,
		durationS: ride.durationS,
		localOffsetS: ride.localOffsetS,
		fileTrainer: ride.fileTrainer,
		motorAssisted: ride.motorAssisted,
		motorSaid: ride.motorSaid,
		trainer: ride.trainer,
		wet: ride.wet,
		surface: ride.surface,
		loadKg: ride.loadKg,
		lapsMeanSlips: ride.lapsMeanSlips,
		bikeId: ride.bikeId,
		wheelId: ride.wheelId,
		chosenBuildId: ride.chosenBuildId,
		riderId: ride.riderId,
		riderCode: ride.riderCode,
		twinId: ride.twinId,
		twinFileName: ride.twinFileName,
		twinDecision: ride.twinDecision,
		withdrawnReason: ride.withdrawnReason,
		example: ride.example,
		analysed: ride.analysed,
		analysisFailure: ride.analysisFailure,
		totalM: ride.totalM,
		observedM: ride.observedM,
		drivenM: ride.drivenM,
		endMs: found.endMs,
		build: found.build,
		buildId: found.buildId,
		parts: found.parts,
		standing: found.standing,
		part: null,
		fromS: 0,
		toS: Infinity,
		fromM: 0
	};
}

function partsOf(
	ride: { wheelId: number | null; chosenBuildId: number | null; startMs: number; endMs: number },
	cutsMs: readonly number[],
	fitted: readonly FittedPeriod[],
	amounts: readonly PartAmount[] | undefined
): RidePart[] {
	const parts = ridePartBuilds(ride, cutsMs, fitted);
	// amounts of other cuts would be wrong ones
	const known = amounts?.length === parts.length ? amounts : [];
	return parts.map((part, index) => ({ ...part, amount: known[index] ?? null }));
}
