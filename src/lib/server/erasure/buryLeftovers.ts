import type { Ledger } from '../ledger/openLedger';
import { removeUpload } from '../store/incomingFiles';
import { ERASED_NAME, HANDED_IN, type Leftovers } from './leftoversOf';

/** how the row of an archive says that its bytes were erased, so that a start brings that to its end */
export const ERASED_ARCHIVE = 'erased';

/**
 * Takes away what lies of a person's files outside the store; bytes of archives go with `finishErasures`. Belongs in the
 * caller's transaction.
 */
export function buryLeftovers(ledger: Ledger, personId: number, { archives, uploads }: Leftovers): void {
	const { database } = ledger;
	for (const id of uploads) removeUpload(ledger, id);
	const drop = database.prepare(
		`UPDATE import SET stage = 'refused', code = @code, sentence = @sentence, technical = NULL, changed_ms = @now,
			file_name = @name, folder = NULL WHERE id = @importId`
	);
	for (const { importId } of archives)
		drop.run({
			importId,
			code: ERASED_ARCHIVE,
			sentence: "This archive was not unpacked to its end, and was erased at a rider's wish.",
			now: ledger.now(),
			name: ERASED_NAME
		});
	// files that were refused or left out have no row but this one; the technical detail may quote them
	database
		.prepare(
			`UPDATE import SET file_name = @name, folder = NULL, technical = NULL WHERE id IN (
				SELECT i.id FROM import i WHERE i.sha256 IS NULL AND ${HANDED_IN})
				OR (sha256 IS NULL AND archive_id IN (SELECT value FROM json_each(@archives)))`
		)
		.run({
			person: personId,
			name: ERASED_NAME,
			archives: JSON.stringify(archives.map(({ importId }) => importId))
		});
}
