import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { findWheel } from './wheels';

/**
 * Says of a wheel that it does not slip, whatever is found on it, or takes that back. Its rides then tell
 * how often the tool is wrong.
 *
 * @throws LedgerRefusal not-found
 */
export function setKnownGood(ledger: Ledger, actor: Actor, wheelId: number, knownGood: boolean): void {
	ledger.database
		.transaction(() => {
			const before = findWheel(ledger, wheelId).knownGood === 1;
			if (before === knownGood) return;
			ledger.database.prepare('UPDATE wheel SET known_good = ? WHERE id = ?').run(knownGood ? 1 : 0, wheelId);
			leaveTrail(ledger, actor, 'assigned', 'wheel', wheelId, { knownGood: { before, after: knownGood } });
		})
		.immediate();
}
