import { createHash, randomBytes } from 'node:crypto';
import { existsSync, rmSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { isErased } from '../erasure/finishErasures';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { findPersonAsActor } from '../people/people';
import { readSetting, writeSetting } from '../settings/storedSetting';
import { faultPoint } from '../store/faultPoint';
import { moveToStoreBeside, sourcePath, syncFolderBeside, writeThrough } from '../store/sourceStore';
import { breathe } from '../verify/breathe';
import { cleanPicture } from './cleanPicture';
import { mediaType } from './mediaType';

/** up to which attachment all were looked at */
const LOOKED_AT = 'cleanPicturesUpTo';
const ACTION = 'cleaned a picture';

interface Picture {
	readonly sha256: string;
	/** the latest attachment of it that was not looked at */
	readonly upTo: number;
}

/** What became of pictures that were kept as they came. */
export interface CleanedPictures {
	cleaned: number;
	/** cut off, not built as they should be, not in the store, or erased in their clean form: they stay as they are */
	left: number;
}

/**
 * Takes what a camera wrote beside a picture (the place, the time, its serial number) out of pictures that were attached
 * before they were cleaned on their way in. The clean bytes are another file with another hash: attachments then name
 * it, the trail says from which to which, and the old file goes. Once all were looked at this costs one query; killed at
 * any step, it is brought to its end by the next call.
 */
export async function cleanOldPictures(ledger: Ledger): Promise<CleanedPictures> {
	const outcome: CleanedPictures = { cleaned: 0, left: 0 };
	const pictures = picturesToLookAt(ledger);
	if (pictures.length === 0) return outcome;
	await dropReplaced(ledger);
	for (const { sha256 } of pictures) {
		const startedMs = performance.now();
		const became = await cleanOne(ledger, sha256);
		if (became !== 'clean already') outcome[became]++;
		await breathe(startedMs);
	}
	writeSetting(ledger, LOOKED_AT, String(Math.max(...pictures.map(({ upTo }) => upTo))));
	return outcome;
}

/** Withdrawn ones as well: they lie in the store like the others. */
function picturesToLookAt(ledger: Ledger): Picture[] {
	return ledger.database
		.prepare<[number], Picture>(
			`SELECT sha256, max(id) AS upTo FROM attachment WHERE id > ? AND media_type LIKE 'image/%'
			GROUP BY sha256 ORDER BY sha256`
		)
		.all(Number(readSetting(ledger, LOOKED_AT) ?? 0));
}

async function cleanOne(ledger: Ledger, sha256: string): Promise<'cleaned' | 'left' | 'clean already'> {
	// what was erased is gone
	if (isErased(ledger, sha256)) return 'clean already';
	const bytes = await readFile(sourcePath(ledger.folder, sha256)).catch((error: NodeJS.ErrnoException) => {
		if (error.code === 'ENOENT') return null;
		throw error;
	});
	const type = bytes && mediaType(bytes);
	const clean = type && cleanPicture(bytes, type);
	if (!clean) return 'left';
	const after = createHash('sha256').update(clean).digest('hex');
	if (after === sha256) return 'clean already';
	if (isErased(ledger, after)) return 'left';
	const path = join(ledger.folder, 'incoming', `picture-${randomBytes(16).toString('hex')}`);
	await writeThrough(path, once(clean), clean.byteLength);
	await moveToStoreBeside(ledger, path, after);
	faultPoint('picture-cleaned');
	const renamed = ledger.database
		.transaction(() =>
			rename(ledger, { sha256, bytes: bytes.byteLength }, { sha256: after, bytes: clean.byteLength })
		)
		.immediate();
	faultPoint('picture-recorded');
	await dropUnneeded(ledger, sha256);
	faultPoint('picture-gone');
	return renamed ? 'cleaned' : 'clean already';
}

interface Stored {
	readonly sha256: string;
	readonly bytes: number;
}

/** @returns whether there still was something to rename: another process may have been quicker */
function rename(ledger: Ledger, before: Stored, after: Stored): boolean {
	const { database } = ledger;
	const attached = database
		.prepare<[string], { id: number; subject: string; subjectId: number; by: number }>(
			'SELECT id, subject, subject_id AS subjectId, by FROM attachment WHERE sha256 = ? ORDER BY id'
		)
		.all(before.sha256);
	if (attached.length === 0) return false;
	database
		.prepare(
			`INSERT OR IGNORE INTO source (sha256, bytes, file_name, stored_ms, stored_by)
			SELECT ?, ?, file_name, stored_ms, stored_by FROM source WHERE sha256 = ?`
		)
		.run(after.sha256, after.bytes, before.sha256);
	database
		.prepare('UPDATE attachment SET sha256 = ?, bytes = ? WHERE sha256 = ?')
		.run(after.sha256, after.bytes, before.sha256);
	for (const { id, subject, subjectId, by } of attached)
		// nobody asked for it, and every entry names a person: whose picture it is
		leaveTrail(ledger, findPersonAsActor(ledger, by)!, ACTION, subject, subjectId, {
			attachment: id,
			why: 'by the program itself: pictures are kept without what the camera wrote beside them',
			sha256: { before: before.sha256, after: after.sha256 },
			bytes: { before: before.bytes, after: after.bytes }
		});
	// handed in as a ride as well, it stays what somebody handed in
	database
		.prepare(
			`DELETE FROM source WHERE sha256 = @sha256
				AND NOT EXISTS (SELECT 1 FROM ride WHERE sha256 = @sha256)
				AND NOT EXISTS (SELECT 1 FROM import WHERE sha256 = @sha256)`
		)
		.run({ sha256: before.sha256 });
	return true;
}

/** Files whose pictures the trail says were cleaned and that no row needs any more: a call before was killed. */
async function dropReplaced(ledger: Ledger): Promise<void> {
	const replaced = ledger.database
		.prepare<[string], string>(
			`SELECT DISTINCT json_extract(detail, '$.sha256.before') FROM trail WHERE action = ?`
		)
		.pluck()
		.all(ACTION);
	for (const sha256 of replaced) await dropUnneeded(ledger, sha256);
}

async function dropUnneeded(ledger: Ledger, sha256: string): Promise<void> {
	const needed = ledger.database
		.prepare<[object]>(
			'SELECT 1 FROM source WHERE sha256 = @sha256 UNION ALL SELECT 1 FROM upload WHERE sha256 = @sha256'
		)
		.get({ sha256 });
	const path = sourcePath(ledger.folder, sha256);
	if (needed || !existsSync(path)) return;
	rmSync(path);
	await syncFolderBeside(dirname(path));
}

async function* once(bytes: Uint8Array) {
	yield bytes;
}
