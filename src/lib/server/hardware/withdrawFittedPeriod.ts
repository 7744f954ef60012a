import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { findPeriod, movePeriod, periodThatEnded, refuseUnseen } from './periodRows';
import { refuseSerialClash } from './refuseSerialClash';

/** why the build before counts as fitted on: in the trail, where putting the period back finds it again */
export const FITTED_ON = 'what was fitted after it was withdrawn';

/**
 * Takes back that a build was on a wheel: it was written down by mistake. The row stays, with the reason,
 * and is read no more. Had it not ended, the build that came off for it counts as fitted on again. Rides
 * find their build anew.
 *
 * @param seenVersion version that stood in the form; not given: whoever withdraws has just read it
 * @throws LedgerRefusal not-found; wrong-value without a reason; conflict when a piece of the build before
 *   is in another hub by now
 */
export function withdrawFittedPeriod(
	ledger: Ledger,
	actor: Actor,
	periodId: number,
	reason: string,
	seenVersion?: number
): void {
	const cleaned = checkText('The reason', reason, { min: 3, max: 500 });
	ledger.database
		.transaction(() => {
			const { id, wheelId, buildId, fromMs, untilMs } = findPeriod(ledger, periodId);
			refuseUnseen(ledger, periodId, seenVersion);
			const cameOff = untilMs === null ? periodThatEnded(ledger, wheelId, fromMs) : null;
			ledger.database
				.prepare('UPDATE fitted_period SET withdrawn_ms = ?, withdrawn_reason = ? WHERE id = ?')
				.run(ledger.now(), cleaned, id);
			leaveTrail(ledger, actor, 'withdrew', 'fitted period', id, {
				reason: cleaned,
				before: {
					wheelId,
					buildId,
					from: toInstant(fromMs),
					until: untilMs === null ? null : toInstant(untilMs)
				}
			});
			if (!cameOff) return;
			movePeriod(ledger, cameOff.id, { fromMs: cameOff.fromMs, untilMs: null });
			refuseSerialClash(ledger, cameOff.buildId);
			leaveTrail(ledger, actor, 'corrected', 'fitted period', cameOff.id, {
				before: { from: toInstant(cameOff.fromMs), until: toInstant(fromMs) },
				after: { from: toInstant(cameOff.fromMs), until: null },
				why: FITTED_ON
			});
		})
		.immediate();
}
