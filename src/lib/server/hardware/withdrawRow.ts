import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/** table -> its word in the trail and in sentences */
export const ROW_WORDS = {
	service: 'service',
	odometer_reading: 'odometer reading',
	unlogged_distance: 'unlogged distance',
	wheel_on_bike: 'wheel on a bike'
} as const;

/**
 * Takes back what was written down by mistake. The row stays, with the reason, and is read no more.
 *
 * @param wheelId the wheel whose page asks; a row of another one is not found
 * @throws LedgerRefusal not-found, also when it was withdrawn before; wrong-value without a reason
 */
export function withdrawRow(
	ledger: Ledger,
	actor: Actor,
	table: keyof typeof ROW_WORDS,
	row: { id: number; wheelId: number },
	reason: string
): void {
	const cleaned = checkText('The reason', reason, { min: 3, max: 500 });
	ledger.database
		.transaction(() => {
			const { changes } = ledger.database
				.prepare(
					`UPDATE ${table} SET withdrawn_ms = ?, withdrawn_reason = ?
					WHERE id = ? AND wheel_id = ? AND withdrawn_ms IS NULL`
				)
				.run(ledger.now(), cleaned, row.id, row.wheelId);
			if (changes === 0)
				throw new LedgerRefusal(
					'not-found',
					`There is no such ${ROW_WORDS[table]}, or it was withdrawn already.`
				);
			leaveTrail(ledger, actor, 'withdrew', ROW_WORDS[table], row.id, { reason: cleaned });
		})
		.immediate();
}
