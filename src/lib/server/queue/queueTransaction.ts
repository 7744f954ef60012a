import type { Ledger } from '../ledger/openLedger';
import { evidenceKey } from '../ledger/remember';
import { writeUnsynced } from '../ledger/writeUnsynced';

/**
 * Writes what the queue found out by itself, in one transaction, and counts its changes of the evidence as the queue's:
 * pages may go on showing figures from before them for a while, as they never may after a person's word. Nobody waits for
 * the disk: what a power cut takes is read again from the sources, and whatever a person writes afterwards takes it along.
 */
export function queueTransaction<Result>(ledger: Ledger, write: () => Result): Result {
	const transaction = ledger.database.transaction((): Result => {
		const before = evidenceKey(ledger);
		const result = write();
		const made = evidenceKey(ledger) - before;
		if (made > 0) ledger.database.prepare('UPDATE evidence SET by_queue = by_queue + ?').run(made);
		return result;
	});
	return writeUnsynced(ledger, () => transaction.immediate());
}
