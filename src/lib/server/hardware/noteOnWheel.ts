import type { Actor } from '../actor';
import { fromInstant, toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { refuseBeforeWheel, refuseFuture } from './periodRows';
import { findWheel } from './wheels';

/**
 * Writes down something that happened to a wheel at an instant: checks the instant, adds the row, leaves
 * the trail.
 *
 * @param row columns beside wheel, instant, person and creation; their names come from our code alone
 * @param options.example the invented workshop keeps its dates, whatever this machine's clock says
 * @returns id of the new row
 * @throws LedgerRefusal not-found; wrong-value for an instant before the wheel existed or still to come
 */
export function noteOnWheel(
	ledger: Ledger,
	actor: Actor,
	what: { table: 'service' | 'odometer_reading' | 'unlogged_distance'; word: string },
	where: { wheelId: number; at: string },
	row: Readonly<Record<string, string | number | null>>,
	options: { example?: boolean } = {}
): number {
	const atMs = fromInstant(where.at);
	if (!options.example) refuseFuture(ledger, atMs);
	return ledger.database
		.transaction((): number => {
			refuseBeforeWheel(ledger, findWheel(ledger, where.wheelId), atMs);
			const names = Object.keys(row);
			const { lastInsertRowid } = ledger.database
				.prepare(
					`INSERT INTO ${what.table} (wheel_id, at_ms, by_id, created_ms, ${names.join(', ')})
					VALUES (?, ?, ?, ?, ${names.map(() => '?').join(', ')})`
				)
				.run(where.wheelId, atMs, actor.personId, ledger.now(), ...Object.values(row));
			const id = Number(lastInsertRowid);
			leaveTrail(ledger, actor, 'wrote down', what.word, id, {
				wheelId: where.wheelId,
				at: toInstant(atMs),
				...row
			});
			return id;
		})
		.immediate();
}
