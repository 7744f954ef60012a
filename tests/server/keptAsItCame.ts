import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Actor, AttachmentSubject, Ledger } from '$lib/server';
import { mediaType } from '$lib/server/hardware/mediaType';
import { sourcePath } from '$lib/server/store/sourceStore';

/** A file attached as programs did before pictures were cleaned: whole, under the hash of all of its bytes. */
export function keptAsItCame(
	ledger: Ledger,
	actor: Actor,
	of: { subject: AttachmentSubject; subjectId: number },
	bytes: Uint8Array
): number {
	const sha256 = createHash('sha256').update(bytes).digest('hex');
	const path = sourcePath(ledger.folder, sha256);
	mkdirSync(dirname(path), { recursive: true });
	writeFileSync(path, bytes);
	ledger.database
		.prepare(
			"INSERT OR IGNORE INTO source (sha256, bytes, file_name, stored_ms, stored_by) VALUES (?, ?, 'photo', ?, ?)"
		)
		.run(sha256, bytes.byteLength, ledger.now(), actor.personId);
	const { lastInsertRowid } = ledger.database
		.prepare(
			`INSERT INTO attachment (subject, subject_id, sha256, file_name, media_type, bytes, by, at_ms)
			VALUES (?, ?, ?, 'photo', ?, ?, ?, ?)`
		)
		.run(of.subject, of.subjectId, sha256, mediaType(bytes), bytes.byteLength, actor.personId, ledger.now());
	return Number(lastInsertRowid);
}
