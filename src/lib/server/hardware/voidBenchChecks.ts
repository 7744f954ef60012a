import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { findBuild } from './builds';

/**
 * Bench checks of a build say nothing any more: its hardware is another one. A build that stood on them
 * becomes a draft again. Belongs in the caller's transaction.
 */
export function voidBenchChecks(ledger: Ledger, actor: Actor, buildId: number, reason: string): void {
	ledger.database
		.prepare('UPDATE bench_check SET void_ms = ?, void_reason = ? WHERE build_id = ? AND void_ms IS NULL')
		.run(ledger.now(), reason, buildId);
	const { state } = findBuild(ledger, buildId);
	if (state !== 'bench-checked' && state !== 'in test') return;
	ledger.database.prepare("UPDATE build SET state = 'draft' WHERE id = ?").run(buildId);
	leaveTrail(ledger, actor, 'changed state', 'build', buildId, { before: state, after: 'draft', reason });
}
