import { buildOfRide, type BuildOfRide, type FittedPeriod } from '$lib/hardware/buildOfRide';
import { listPeriods } from '../hardware/periodRows';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { currentVersion } from '../queue/analysisVersions';
import { rideStanding, type Standing } from './rideStanding';

interface StoredRide {
	id: number;
	sha256: string;
	fileName: string;
	startMs: number;
	durationS: number;
	localOffsetS: number | null;
	fileTrainer: number | null;
	motorAssisted: number | null;
	trainer: number | null;
	wet: number | null;
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

/** A ride as the statistics see it: its summary, its build and whether it counts. No traces. */
export interface RideFacts extends StoredRide {
	readonly endMs: number;
	readonly build: BuildOfRide;
	readonly buildId: number | null;
	readonly standing: Standing;
}

const SELECT = `SELECT r.id, r.sha256, r.file_name AS fileName, r.started_ms AS startMs,
	r.duration_s AS durationS, r.local_offset_s AS localOffsetS, r.file_trainer AS fileTrainer,
	r.motor_assisted AS motorAssisted, r.trainer, r.wet, r.wheel_id AS wheelId,
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

/** Every ride, or every one on a wheel, in order of its start. */
export function allRideFacts(ledger: Ledger, onWheelId?: number): readonly RideFacts[] {
	if (onWheelId === undefined) return remember(ledger, 'rides', () => readFacts(ledger));
	return readFacts(ledger, onWheelId);
}

function readFacts(ledger: Ledger, onWheelId?: number): RideFacts[] {
	const where = onWheelId === undefined ? '' : 'WHERE r.wheel_id = @onWheelId';
	const rides = ledger.database
		.prepare<[object], StoredRide>(`${SELECT} ${where} ORDER BY r.started_ms, r.id`)
		.all({ version: currentVersion(ledger), onWheelId });
	return withBuilds(rides, listPeriods(ledger));
}

/** One ride; null when there is no such ride. */
export function rideFacts(ledger: Ledger, rideId: number): RideFacts | null {
	const rides = ledger.database
		.prepare<[{ version: number; rideId: number }], StoredRide>(`${SELECT} WHERE r.id = @rideId`)
		.all({ version: currentVersion(ledger), rideId });
	return withBuilds(rides, listPeriods(ledger))[0] ?? null;
}

function withBuilds(rides: readonly StoredRide[], periods: readonly FittedPeriod[]): RideFacts[] {
	const byWheel = new Map<number, FittedPeriod[]>();
	for (const period of periods) {
		const ofWheel = byWheel.get(period.wheelId);
		if (ofWheel) ofWheel.push(period);
		else byWheel.set(period.wheelId, [period]);
	}
	return rides.map((ride) => {
		const endMs = ride.startMs + ride.durationS * 1000;
		const build = buildOfRide(
			{ wheelId: ride.wheelId, chosenBuildId: ride.chosenBuildId, startMs: ride.startMs, endMs },
			byWheel.get(ride.wheelId ?? -1) ?? []
		);
		const standing = rideStanding({
			withdrawnReason: ride.withdrawnReason,
			build,
			trainer: (ride.trainer ?? ride.fileTrainer) === 1,
			motorAssisted: ride.motorAssisted === 1,
			twin: ride.twinId === null ? null : { fileName: ride.twinFileName ?? '', decision: ride.twinDecision },
			analysed: ride.analysed === 1,
			analysisFailure: ride.analysisFailure
		});
		return { ...ride, endMs, build, buildId: build.kind === 'build' ? build.buildId : null, standing };
	});
}
