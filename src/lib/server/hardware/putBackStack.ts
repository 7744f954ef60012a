import type { Actor } from '../actor';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { standAgain } from './putBackRow';
import { refuseTakenVariant } from './stackSave';

/**
 * Puts an axial stack back that was withdrawn. Stacks of the build that were dished on it are so again, where
 * nothing else was said since.
 *
 * @param buildId the build whose page asks; a stack of another one is not found
 * @throws LedgerRefusal not-found, also when it is not withdrawn; conflict when its variant has another stack
 *   by now
 */
export function putBackStack(ledger: Ledger, actor: Actor, buildId: number, stackId: number): void {
	const { database } = ledger;
	database
		.transaction(() => {
			const row = database
				.prepare<[number, number], { variant: string }>(
					'SELECT variant FROM hub_stack WHERE id = ? AND build_id = ? AND withdrawn_ms IS NOT NULL'
				)
				.get(stackId, buildId);
			if (!row) throw new LedgerRefusal('not-found', 'There is no such stack, or it is not withdrawn.');
			refuseTakenVariant(ledger, buildId, row.variant, stackId);
			const dish = database.prepare(
				'UPDATE hub_stack SET dished_on_id = ? WHERE id = ? AND build_id = ? AND dished_on_id IS NULL'
			);
			for (const other of dishedOnIt(ledger, stackId)) dish.run(stackId, other, buildId);
			standAgain(ledger, actor, { table: 'hub_stack', word: 'hub stack', id: stackId });
		})
		.immediate();
}

/** the stacks that lost their base when this one was withdrawn */
function dishedOnIt(ledger: Ledger, stackId: number): number[] {
	const { detail } = ledger.database
		.prepare<[string], { detail: string }>(
			`SELECT detail FROM trail WHERE subject = 'hub stack' AND subject_id = ? AND action = 'withdrew'
			ORDER BY id DESC LIMIT 1`
		)
		.get(String(stackId))!;
	return (JSON.parse(detail) as { dishedOnIt?: number[] }).dishedOnIt ?? [];
}
