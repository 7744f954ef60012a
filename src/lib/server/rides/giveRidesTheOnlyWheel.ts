import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { onlyWheelAt } from './onlyWheelAt';

/**
 * Rides that came before their wheel was set up: while there is only one wheel, those that fall into its
 * fitted periods were ridden on it. Belongs in the caller's transaction.
 */
export function giveRidesTheOnlyWheel(ledger: Ledger, actor: Actor): void {
	const rides = ledger.database
		.prepare<[], { id: number; startMs: number; endMs: number }>(
			`SELECT id, started_ms AS startMs, started_ms + 1000 * duration_s AS endMs
			FROM ride WHERE wheel_id IS NULL`
		)
		.all();
	const update = ledger.database.prepare('UPDATE ride SET wheel_id = ? WHERE id = ?');
	for (const { id, startMs, endMs } of rides) {
		const wheelId = onlyWheelAt(ledger, startMs, endMs);
		if (wheelId === null) continue;
		update.run(wheelId, id);
		leaveTrail(ledger, actor, 'assigned', 'ride', id, { wheelId, why: 'the only wheel at that time' });
	}
}
