import type { FittedPeriod } from '$lib/hardware/buildOfRide';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { allRideFacts, type RideFacts } from '../rides/rideFacts';
import { listPeriods } from './periodRows';

/**
 * How many rides tell about a build: those that touch one of its fitted periods and those that a person
 * gave it. Withdrawn rides count too, because they can come back.
 */
export function ridesOfBuild(ledger: Ledger, buildId: number): number {
	// within a transaction nothing is kept: all rides would be read for this one number
	if (ledger.database.inTransaction) return countInLedger(ledger, buildId);
	return remember(ledger, `rides of build ${buildId}`, () => countKnown(ledger, buildId));
}

/** Of the rides that are at hand, which a page has anyway: the ledger would name some thousand numbers. */
function countKnown(ledger: Ledger, buildId: number): number {
	const onWheel = new Map<number, FittedPeriod[]>();
	for (const period of listPeriods(ledger)) {
		if (period.buildId !== buildId) continue;
		onWheel.set(period.wheelId, [...(onWheel.get(period.wheelId) ?? []), period]);
	}
	const touches = ({ wheelId, startMs, endMs }: RideFacts) =>
		wheelId !== null &&
		(onWheel.get(wheelId) ?? []).some(
			({ fromMs, untilMs }) =>
				(untilMs === null || startMs < untilMs) && (startMs >= fromMs || endMs > fromMs)
		);
	let rides = 0;
	for (const ride of allRideFacts(ledger)) if (ride.chosenBuildId === buildId || touches(ride)) rides++;
	return rides;
}

function countInLedger(ledger: Ledger, buildId: number): number {
	const chosen = ledger.database.prepare<[number], number>('SELECT id FROM ride WHERE chosen_build_id = ?');
	const ids = new Set(chosen.pluck().all(buildId));
	const touching = ledger.database
		.prepare<[object], number>(
			`SELECT id FROM ride WHERE wheel_id = @wheelId AND started_ms < @untilMs
			AND (started_ms >= @fromMs OR started_ms + duration_s * 1000 > @fromMs)`
		)
		.pluck();
	for (const { buildId: fitted, wheelId, fromMs, untilMs } of listPeriods(ledger)) {
		if (fitted !== buildId) continue;
		for (const id of touching.all({ wheelId, fromMs, untilMs: untilMs ?? 9e15 })) ids.add(id);
	}
	return ids.size;
}
