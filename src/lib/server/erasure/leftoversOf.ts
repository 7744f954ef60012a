import type { Ledger } from '../ledger/openLedger';
import { BROKE_OFF_AFTER_MS } from '../store/brokenUploads';

/** What lies of a person's files outside the store: none of it became a source. */
export interface Leftovers {
	/** archives that were given up and keep their bytes */
	archives: { importId: number; sha256: string }[];
	/** uploads of which not everything came */
	uploads: string[];
	/** rows of files that became no source, but say what they were called */
	named: number;
	/** archives that are unpacked, and uploads that come in, just now */
	beingRead: number;
}

/** stands where the name of a file stood */
export const ERASED_NAME = 'erased file';

/** Handed in for this rider, or by this person and for nobody in particular; the import is i. */
export const HANDED_IN = `i.example = 0 AND (json_extract(i.hints, '$.riderId') = @person
	OR (json_extract(i.hints, '$.riderId') IS NULL AND i.actor_id = @person))`;

const ARCHIVES = `SELECT i.id AS importId, i.archive_sha256 AS sha256, i.stage = 'unpacking' AS reading FROM import i
	WHERE i.stage IN ('unpacking', 'failed') AND i.archive_sha256 IN (
		SELECT i.archive_sha256 FROM import i WHERE i.archive_sha256 IS NOT NULL AND (${HANDED_IN}
			OR EXISTS (SELECT 1 FROM import m WHERE m.archive_id = i.id
				AND m.sha256 IN (SELECT value FROM json_each(@files)))))
	ORDER BY i.id`;

/**
 * Archives, half-sent uploads and names that an erasure must reach beside the files in the store. An archive goes as
 * well where one of the files that are erased lay in it, whoever handed it in: its bytes hold that file.
 *
 * @param files SHA-256 of the files that are erased
 */
export function leftoversOf(ledger: Ledger, personId: number, files: readonly string[]): Leftovers {
	const { database } = ledger;
	const person = { person: personId };
	const archives = database
		.prepare<[object], { importId: number; sha256: string; reading: number }>(ARCHIVES)
		.all({ ...person, files: JSON.stringify(files) });
	const uploads = database
		.prepare<[object], { id: string; touchedMs: number }>(
			`SELECT u.id, u.touched_ms AS touchedMs FROM upload u JOIN import i ON i.id = u.import_id
			WHERE i.stage = 'receiving' AND ${HANDED_IN} ORDER BY u.id`
		)
		.all(person);
	const coming = uploads.filter(({ touchedMs }) => touchedMs > ledger.now() - BROKE_OFF_AFTER_MS);
	return {
		archives: archives
			.filter(({ reading }) => reading === 0)
			.map(({ importId, sha256 }) => ({ importId, sha256 })),
		uploads: uploads.map(({ id }) => id),
		named: database
			.prepare<[object], number>(
				`SELECT count(*) FROM import i WHERE i.sha256 IS NULL AND i.stage <> 'receiving'
					AND i.file_name <> @name AND ${HANDED_IN}`
			)
			.pluck()
			.get({ ...person, name: ERASED_NAME })!,
		beingRead: archives.filter(({ reading }) => reading === 1).length + coming.length
	};
}
