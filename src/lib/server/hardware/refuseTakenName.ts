import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/** Two wheels, builds or bikes of one name could not be told apart on a page. */
export function refuseTakenName(ledger: Ledger, table: 'wheel' | 'build' | 'bike', name: string): void {
	if (ledger.database.prepare(`SELECT 1 FROM ${table} WHERE name = ?`).get(name))
		throw new LedgerRefusal('conflict', `There is a ${table} named "${name}" already.`);
}
