import type { FittedPeriod } from '$lib/hardware/buildOfRide';
import type { Actor } from '../actor';
import { toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { giveRidesTheOnlyWheel } from '../rides/giveRidesTheOnlyWheel';
import { findBuild } from './builds';
import { refuseWithdrawnBuild } from './fittedPeriods';
import { movePeriod, openPeriod, refuseBeforeWheel, refuseOverlap } from './periodRows';
import { standAgain } from './putBackRow';
import { refuseSerialClash } from './refuseSerialClash';
import { findWheel } from './wheels';
import { FITTED_ON } from './withdrawFittedPeriod';

/**
 * Puts back that a build was on a wheel. The build before it that counted as fitted on, because this one was
 * withdrawn, comes off again. Rides find their build anew.
 *
 * @param of the wheel or the build whose page asks; a period of another one is not found
 * @throws LedgerRefusal not-found, also when it is not withdrawn; overlap with what is on the wheel by what
 *   stands now; conflict when a piece with a serial is in another hub at that time, or when the build is
 *   withdrawn and would be on it now; wrong-value before the wheel existed
 */
export function putBackFittedPeriod(
	ledger: Ledger,
	actor: Actor,
	periodId: number,
	of: { wheelId?: number; buildId?: number }
): void {
	ledger.database
		.transaction(() => {
			const { wheelId, buildId, fromMs, untilMs } = withdrawnPeriod(ledger, periodId, of);
			const wheel = findWheel(ledger, wheelId);
			refuseWithdrawnBuild(findBuild(ledger, buildId), untilMs);
			refuseBeforeWheel(ledger, wheel, fromMs);
			const before = untilMs === null ? openPeriod(ledger, wheelId, fromMs) : null;
			if (before && countedOn(ledger, before.id, fromMs)) {
				movePeriod(ledger, before.id, { fromMs: before.fromMs, untilMs: fromMs });
				leaveTrail(ledger, actor, 'took off', 'fitted period', before.id, { until: toInstant(fromMs) });
			}
			refuseOverlap(ledger, wheel, { fromMs, untilMs });
			standAgain(ledger, actor, { table: 'fitted_period', word: 'fitted period', id: periodId });
			refuseSerialClash(ledger, buildId);
			giveRidesTheOnlyWheel(ledger, actor);
		})
		.immediate();
}

function withdrawnPeriod(
	ledger: Ledger,
	periodId: number,
	{ wheelId, buildId }: { wheelId?: number; buildId?: number }
): FittedPeriod {
	const period = ledger.database
		.prepare<[object], FittedPeriod>(
			`SELECT id, wheel_id AS wheelId, build_id AS buildId, from_ms AS fromMs, until_ms AS untilMs
			FROM fitted_period WHERE id = @periodId AND withdrawn_ms IS NOT NULL
				AND (@wheelId IS NULL OR wheel_id = @wheelId) AND (@buildId IS NULL OR build_id = @buildId)`
		)
		.get({ periodId, wheelId: wheelId ?? null, buildId: buildId ?? null });
	if (!period)
		throw new LedgerRefusal('not-found', 'There is no such fitted period, or it is not withdrawn.');
	return period;
}

/** whether the last that happened to a period is that its end, at this instant, was taken away */
function countedOn(ledger: Ledger, periodId: number, endedMs: number): boolean {
	const last = ledger.database
		.prepare<[string], { detail: string }>(
			`SELECT detail FROM trail WHERE subject = 'fitted period' AND subject_id = ? ORDER BY id DESC LIMIT 1`
		)
		.get(String(periodId));
	const { why, before } = JSON.parse(last?.detail ?? '{}') as { why?: string; before?: { until?: string } };
	return why === FITTED_ON && before?.until === toInstant(endedMs);
}
