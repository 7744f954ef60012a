import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { trailVersion } from '../ledger/trailVersion';
import { LedgerRefusal } from '../refusal';
import { inWorkshopZone } from '../settings/inWorkshopZone';
import { refuseBeforeWheel } from './periodRows';
import { refuseBikeOverlap } from './wheelOnBike';
import { findWheel } from './wheels';
import { ROW_WORDS } from './withdrawRow';

/** table -> its word in the trail */
const WORDS = { ...ROW_WORDS, inspection: 'inspection' } as const;
export type RowOfWheel = keyof typeof WORDS;

/**
 * Puts a row of a wheel back that was withdrawn by mistake. It counts again as it stood, unless it would now
 * stand beside what took its place.
 *
 * @param row.wheelId the wheel whose page asks; a row of another one is not found
 * @throws LedgerRefusal not-found, also when it is not withdrawn; conflict when a row of its kind was written
 *   down at the same instant since; overlap when wheel or bike were elsewhere by what stands now; wrong-value
 *   when the wheel is said to exist only from later on
 */
export function putBackRow(
	ledger: Ledger,
	actor: Actor,
	table: RowOfWheel,
	row: { id: number; wheelId: number }
): void {
	ledger.database
		.transaction(() => {
			const atMs = withdrawnAt(ledger, table, row);
			refuseBeforeWheel(ledger, findWheel(ledger, row.wheelId), atMs);
			if (table === 'wheel_on_bike') refuseBikeOverlap(ledger, row.id);
			else refuseWrittenAnew(ledger, table, row, atMs);
			standAgain(ledger, actor, { table, word: WORDS[table], id: row.id });
		})
		.immediate();
}

/** instant at which the withdrawn row lies, or begins */
function withdrawnAt(ledger: Ledger, table: RowOfWheel, row: { id: number; wheelId: number }): number {
	const column = table === 'wheel_on_bike' ? 'from_ms' : 'at_ms';
	const found = ledger.database
		.prepare<[number, number], { atMs: number }>(
			`SELECT ${column} AS atMs FROM ${table} WHERE id = ? AND wheel_id = ? AND withdrawn_ms IS NOT NULL`
		)
		.get(row.id, row.wheelId);
	if (!found)
		throw new LedgerRefusal('not-found', `There is no such ${WORDS[table]}, or it is not withdrawn.`);
	return found.atMs;
}

/** Who withdrew a row to write it down correctly must not have both: a distance would count twice. */
function refuseWrittenAnew(
	ledger: Ledger,
	table: Exclude<RowOfWheel, 'wheel_on_bike'>,
	row: { id: number; wheelId: number },
	atMs: number
): void {
	const word = WORDS[table];
	const withdrawn = trailVersion(ledger, word, row.id);
	const since = ledger.database
		.prepare<[number, number], { id: number }>(
			`SELECT id FROM ${table} WHERE wheel_id = ? AND at_ms = ? AND withdrawn_ms IS NULL`
		)
		.all(row.wheelId, atMs)
		.some(({ id }) => trailVersion(ledger, word, id) > withdrawn);
	if (since)
		throw new LedgerRefusal(
			'conflict',
			`Another ${word} at ${inWorkshopZone(ledger, atMs)} was written down since this one was withdrawn, and both would count. Withdraw that one first, or leave this one out.`
		);
}

/**
 * Lets a withdrawn row stand again, with its trail. Belongs in the caller's transaction, after its checks.
 *
 * @param row.table a name from our code alone
 */
export function standAgain(
	ledger: Ledger,
	actor: Actor,
	{ table, word, id }: { table: string; word: string; id: number }
): void {
	const { reason } = ledger.database
		.prepare<[number], { reason: string }>(`SELECT withdrawn_reason AS reason FROM ${table} WHERE id = ?`)
		.get(id)!;
	ledger.database
		.prepare(`UPDATE ${table} SET withdrawn_ms = NULL, withdrawn_reason = NULL WHERE id = ?`)
		.run(id);
	leaveTrail(ledger, actor, 'put back', word, id, { withdrawnBecause: reason });
}
