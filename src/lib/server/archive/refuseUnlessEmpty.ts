import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { archiveTables, quoted } from './archiveTables';

/**
 * An archive is taken into an empty ledger only: rows of two ledgers have the same numbers and would mean
 * different things.
 *
 * @throws LedgerRefusal conflict
 */
export function refuseUnlessEmpty(ledger: Ledger): void {
	for (const { name } of archiveTables(ledger.database)) {
		// the mark that tells this ledger's cookies from others is made when a page is opened
		const where = name === 'setting' ? "WHERE name <> 'ledgerMark'" : '';
		if (!ledger.database.prepare(`SELECT 1 FROM ${quoted(name)} ${where} LIMIT 1`).get()) continue;
		throw new LedgerRefusal(
			'conflict',
			'There is something in this ledger already; an archive is taken into an empty one only. Name another data folder.'
		);
	}
}
