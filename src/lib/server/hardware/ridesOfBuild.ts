import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { listPeriods } from './periodRows';

/**
 * How many rides tell about a build: those that touch one of its fitted periods and those that a person
 * gave it. Withdrawn rides count too, because they can come back.
 */
export function ridesOfBuild(ledger: Ledger, buildId: number): number {
	return remember(ledger, `rides of build ${buildId}`, () => countRides(ledger, buildId));
}

function countRides(ledger: Ledger, buildId: number): number {
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
