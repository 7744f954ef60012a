import type { Ledger } from '../ledger/openLedger';

/** The files of an archive in its order, each with the import that says what became of it; none for other files. */
export function archiveLines(ledger: Ledger, archiveId: number): { importId: number; name: string }[] {
	return ledger.database
		.prepare<[number], { importId: number; name: string }>(
			`SELECT id AS importId, coalesce(folder || '/', '') || file_name AS name
			FROM import WHERE archive_id = ? ORDER BY member`
		)
		.all(archiveId);
}
