import type { Ledger } from '../ledger/openLedger';

/**
 * Writes both databases anew, so that nothing is left of what older programs removed without overwriting it.
 * Needs a moment in which nobody else writes.
 *
 * @returns false when somebody was in the way; nothing was changed then
 */
export function compactLedger(ledger: Ledger): boolean {
	try {
		for (const database of [ledger.database, ledger.channels]) {
			database.exec('VACUUM');
			database.pragma('wal_checkpoint(TRUNCATE)');
		}
		return true;
	} catch (error) {
		if (/^SQLITE_(BUSY|LOCKED)/.test((error as { code?: string }).code ?? '')) return false;
		throw error;
	}
}
