import type { Ledger } from './openLedger';
import { syncLog } from './syncLog';
import { writeUnsynced } from './writeUnsynced';

/**
 * Writes, and waits for the disk beside the event loop: who is answered after it can rely on it as on any other write,
 * and pages are answered meanwhile.
 */
export async function writeBeside<Result>(ledger: Ledger, write: () => Result): Promise<Result> {
	const result = writeUnsynced(ledger, write);
	await syncLog(ledger);
	return result;
}
