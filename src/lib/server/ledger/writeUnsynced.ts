import type { Ledger } from './openLedger';

/**
 * Writes something that may be lost with the power, without waiting for the disk: signs of life, and who has taken up
 * what. The ledger stays whole, and the next write that counts takes it along. A wait for the disk holds up every page.
 */
export function writeUnsynced<Result>(ledger: Ledger, write: () => Result): Result {
	const { database } = ledger;
	if (database.inTransaction) return write();
	database.pragma('synchronous = NORMAL');
	try {
		return write();
	} finally {
		database.pragma('synchronous = FULL');
	}
}
