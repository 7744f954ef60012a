import { randomBytes } from 'node:crypto';
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Actor } from '../actor';
import { isErased } from '../erasure/finishErasures';
import { checkText } from '../ledger/checkText';
import { toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { cleanFileName } from '../store/cleanFileName';
import { moveToStore, sourcePath, writeThrough } from '../store/sourceStore';
import { MEGABYTE } from '../store/uploadLimit';
import { refuseErased, refuseMore, refuseTwice } from './attachmentRefusals';
import { cleanPicture } from './cleanPicture';
import { mediaType, type MediaType } from './mediaType';

/** What files can be attached to: the trail's word and the table it stands for. */
const SUBJECTS = {
	build: 'build',
	part: 'part',
	wheel: 'wheel',
	inspection: 'inspection',
	incident: 'incident',
	service: 'service',
	'felt slip': 'felt_slip'
} as const;
export type AttachmentSubject = keyof typeof SUBJECTS;

/** the largest file that is attached; a form is held in memory, so this is less than a ride may have */
export const LARGEST_ATTACHMENT_BYTES = 10 * MEGABYTE;

export interface AttachmentView {
	id: number;
	fileName: string;
	mediaType: MediaType;
	bytes: number;
	caption: string;
	by: string;
	at: string;
	/** null while it stands */
	withdrawnReason: string | null;
	/** its bytes were taken away for good at a rider's wish */
	erased: boolean;
}

/**
 * Attaches a photo, a drawing or a sheet. The file lies in the store under its hash before the ledger names
 * it, and is never changed. Pictures are kept without what the camera wrote beside them (`cleanPicture`).
 *
 * @param input.bytes the whole file
 * @param options.most as many may be attached to this thing; any number unless given
 * @returns id of the attachment
 * @throws LedgerRefusal not-found; too-large; wrong-value for an empty file, for kinds that are not taken and for
 *   pictures that are not whole; conflict when this very file is attached there already, or was erased, or when there
 *   are as many as may be
 */
export async function attachFile(
	ledger: Ledger,
	actor: Actor,
	input: {
		subject: AttachmentSubject;
		subjectId: number;
		name: string;
		bytes: Uint8Array;
		caption?: string;
	},
	options: { example?: boolean; most?: number } = {}
): Promise<number> {
	const caption = checkText('The caption', input.caption, { min: 0, max: 300 });
	const fileName = cleanFileName(input.name);
	const { type, bytes } = checkBytes(input.bytes);
	refuseUnknownSubject(ledger, input);
	const path = join(ledger.folder, 'incoming', `attachment-${randomBytes(16).toString('hex')}`);
	const { sha256, size } = await writeThrough(path, once(bytes), LARGEST_ATTACHMENT_BYTES);
	const attach = ledger.database.transaction((): number => {
		refuseUnknownSubject(ledger, input);
		refuseErased(ledger, sha256);
		refuseTwice(ledger, input, sha256);
		refuseMore(ledger, input, options.most);
		// before the ledger names it, and only once nothing stands against it
		moveToStore(ledger, path, sha256);
		const now = ledger.now();
		ledger.database
			.prepare(
				'INSERT OR IGNORE INTO source (sha256, bytes, file_name, stored_ms, stored_by) VALUES (?, ?, ?, ?, ?)'
			)
			.run(sha256, size, fileName, now, actor.personId);
		const { lastInsertRowid } = ledger.database
			.prepare(
				`INSERT INTO attachment (subject, subject_id, sha256, file_name, media_type, bytes, caption, by,
						at_ms, example)
					VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`
			)
			.run(
				input.subject,
				input.subjectId,
				sha256,
				fileName,
				type,
				size,
				caption,
				actor.personId,
				now,
				options.example ? 1 : 0
			);
		const id = Number(lastInsertRowid);
		leaveTrail(ledger, actor, 'attached', input.subject, input.subjectId, {
			attachment: id,
			fileName,
			sha256
		});
		return id;
	});
	try {
		return attach.immediate();
	} finally {
		rmSync(path, { force: true });
	}
}

/** Files of one thing, the newest first; also those that were withdrawn. */
export function listAttachments(
	ledger: Ledger,
	subject: AttachmentSubject,
	subjectId: number
): AttachmentView[] {
	return ledger.database
		.prepare<[string, number], Omit<AttachmentView, 'at' | 'erased'> & { atMs: number; erased: number }>(
			`SELECT a.id, a.file_name AS fileName, a.media_type AS mediaType, a.bytes, a.caption, p.code AS by,
				a.at_ms AS atMs, a.withdrawn_reason AS withdrawnReason,
				EXISTS (SELECT 1 FROM erased_source e WHERE e.sha256 = a.sha256) AS erased
			FROM attachment a JOIN person p ON p.id = a.by WHERE a.subject = ? AND a.subject_id = ?
			ORDER BY a.at_ms DESC, a.id DESC`
		)
		.all(subject, subjectId)
		.map(({ atMs, erased, ...row }) => ({ ...row, erased: erased === 1, at: toInstant(atMs) }));
}

/**
 * Takes an attachment out of sight, with the reason. File and row stay.
 *
 * @throws LedgerRefusal not-found, also when it belongs to another thing; wrong-value without a reason;
 *   conflict when it is withdrawn already
 */
export function withdrawAttachment(
	ledger: Ledger,
	actor: Actor,
	of: { subject: AttachmentSubject; subjectId: number },
	attachmentId: number,
	reason: string
): void {
	const cleaned = checkText('The reason', reason, { min: 3, max: 500 });
	ledger.database
		.transaction(() => {
			const row = ledger.database
				.prepare<[number, string, number], { withdrawn: number; fileName: string }>(
					`SELECT withdrawn_ms IS NOT NULL AS withdrawn, file_name AS fileName FROM attachment
					WHERE id = ? AND subject = ? AND subject_id = ?`
				)
				.get(attachmentId, of.subject, of.subjectId);
			if (!row) throw new LedgerRefusal('not-found', 'There is no such attachment.');
			if (row.withdrawn) throw new LedgerRefusal('conflict', 'This attachment is withdrawn already.');
			ledger.database
				.prepare(
					'UPDATE attachment SET withdrawn_ms = ?, withdrawn_by = ?, withdrawn_reason = ? WHERE id = ?'
				)
				.run(ledger.now(), actor.personId, cleaned, attachmentId);
			leaveTrail(ledger, actor, 'withdrew an attachment', of.subject, of.subjectId, {
				attachment: attachmentId,
				fileName: row.fileName,
				reason: cleaned
			});
		})
		.immediate();
}

/**
 * Puts an attachment that was withdrawn back where it was.
 *
 * @throws LedgerRefusal not-found, also when it belongs to another thing; conflict when it is not withdrawn,
 *   when its bytes were erased, or when the same file was attached anew since
 */
export function putBackAttachment(
	ledger: Ledger,
	actor: Actor,
	of: { subject: AttachmentSubject; subjectId: number },
	attachmentId: number
): void {
	ledger.database
		.transaction(() => {
			const row = ledger.database
				.prepare<[number, string, number], { sha256: string; fileName: string; reason: string | null }>(
					`SELECT sha256, file_name AS fileName, withdrawn_reason AS reason FROM attachment
					WHERE id = ? AND subject = ? AND subject_id = ?`
				)
				.get(attachmentId, of.subject, of.subjectId);
			if (!row) throw new LedgerRefusal('not-found', 'There is no such attachment.');
			if (row.reason === null) throw new LedgerRefusal('conflict', 'This attachment is not withdrawn.');
			if (isErased(ledger, row.sha256))
				throw new LedgerRefusal(
					'conflict',
					"This file was erased at its owner's wish and is not there any more."
				);
			refuseTwice(ledger, of, row.sha256);
			ledger.database
				.prepare(
					'UPDATE attachment SET withdrawn_ms = NULL, withdrawn_by = NULL, withdrawn_reason = NULL WHERE id = ?'
				)
				.run(attachmentId);
			leaveTrail(ledger, actor, 'put an attachment back', of.subject, of.subjectId, {
				attachment: attachmentId,
				fileName: row.fileName,
				reason: row.reason
			});
		})
		.immediate();
}

/** Where the file of an attachment lies; null when there is none or it is withdrawn or erased. */
export function attachmentFile(
	ledger: Ledger,
	attachmentId: number
): { path: string; fileName: string; mediaType: MediaType; bytes: number } | null {
	const row = ledger.database
		.prepare<[number], { sha256: string; fileName: string; mediaType: MediaType; bytes: number }>(
			`SELECT sha256, file_name AS fileName, media_type AS mediaType, bytes FROM attachment
			WHERE id = ? AND withdrawn_ms IS NULL
				AND NOT EXISTS (SELECT 1 FROM erased_source e WHERE e.sha256 = attachment.sha256)`
		)
		.get(attachmentId);
	if (!row) return null;
	const { sha256, ...file } = row;
	return { ...file, path: sourcePath(ledger.folder, sha256) };
}

function checkBytes(bytes: Uint8Array): { type: MediaType; bytes: Uint8Array } {
	if (bytes.byteLength === 0) throw new LedgerRefusal('wrong-value', 'No file was chosen, or it is empty.');
	if (bytes.byteLength > LARGEST_ATTACHMENT_BYTES)
		throw new LedgerRefusal(
			'too-large',
			`An attachment may have ${LARGEST_ATTACHMENT_BYTES / MEGABYTE} MB at most; make the picture smaller.`
		);
	const type = mediaType(bytes);
	if (!type)
		throw new LedgerRefusal(
			'wrong-value',
			'Only pictures (PNG, JPEG, WebP), PDF and plain text are taken; what a file is is told from its content.'
		);
	const cleaned = cleanPicture(bytes, type);
	if (!cleaned)
		throw new LedgerRefusal(
			'wrong-value',
			'This picture is cut off or damaged; take it again, or save it anew and attach that.'
		);
	return { type, bytes: cleaned };
}

function refuseUnknownSubject(
	ledger: Ledger,
	{ subject, subjectId }: { subject: AttachmentSubject; subjectId: number }
): void {
	const table = Object.hasOwn(SUBJECTS, subject) ? SUBJECTS[subject] : null;
	if (!table || !ledger.database.prepare(`SELECT 1 FROM ${table} WHERE id = ?`).get(subjectId))
		throw new LedgerRefusal('not-found', `There is no such ${table ?? 'thing'} to attach a file to.`);
}

async function* once(bytes: Uint8Array) {
	yield bytes;
}
