import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/** Where the bytes of an upload lie while they come. */
export function incomingPath(ledger: Ledger, id: string): string {
	if (!/^[0-9a-f]{32}$/.test(id)) throw new LedgerRefusal('not-found', 'There is no such upload.');
	return join(ledger.folder, 'incoming', id);
}

/** Takes an upload and what came of it away, together with its place in the list of imports. */
export function removeUpload(ledger: Ledger, id: string): void {
	rmSync(incomingPath(ledger, id), { force: true });
	ledger.database
		.prepare(
			"DELETE FROM import WHERE stage = 'receiving' AND id = (SELECT import_id FROM upload WHERE id = ?)"
		)
		.run(id);
}
