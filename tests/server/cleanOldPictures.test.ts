import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import {
	attachFile,
	attachmentFile,
	createBuild,
	historyOf,
	listAttachments,
	verifyLedger,
	withdrawAttachment,
	type Ledger
} from '$lib/server';
import { grayPng } from '$lib/server/example/grayPng';
import { cleanOldPictures } from '$lib/server/hardware/cleanOldPictures';
import { cleanPicture } from '$lib/server/hardware/cleanPicture';
import { sourcePath } from '$lib/server/store/sourceStore';
import { keptAsItCame } from './keptAsItCame';
import { chunk, jpegWith, pngWith, SECRET, webpWith } from './photos';
import { freshLedger, rowsOf, storeSomething } from './testLedger';

const PHOTO = jpegWith({ orientation: 6 });
const hashOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

function withBuild() {
	const test = freshLedger();
	const buildId = createBuild(test.ledger, test.actor, { name: 'B', description: '' });
	const attachOld = (bytes: Uint8Array, subjectId = buildId) =>
		keptAsItCame(test.ledger, test.actor, { subject: 'build', subjectId }, bytes);
	return { ...test, buildId, attachOld };
}

/** all that lies in the store, by name */
function stored(ledger: Ledger): string[] {
	return readdirSync(join(ledger.folder, 'sources'), { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map(({ name }) => name)
		.sort();
}
const secrets = (ledger: Ledger) =>
	stored(ledger).filter((sha256) => readFileSync(sourcePath(ledger.folder, sha256)).includes(SECRET));
const namedSources = (ledger: Ledger) =>
	rowsOf(ledger, 'SELECT sha256 FROM source ORDER BY sha256').map(({ sha256 }) => sha256);

it('cleans pictures of older programs, withdrawn ones too, and says in the trail which file became which', async () => {
	const { ledger, actor, buildId, attachOld } = withBuild();
	const pictures = [
		PHOTO,
		pngWith(Buffer.from(grayPng(2, 2, new Uint8Array(4))), [chunk('tEXt', SECRET)]),
		webpWith({ exif: true })
	];
	const ids: number[] = [];
	for (const picture of pictures) ids.push(await attachOld(picture));
	withdrawAttachment(ledger, actor, { subject: 'build', subjectId: buildId }, ids[2], 'another hub');
	const storedMs = rowsOf(ledger, 'SELECT DISTINCT stored_ms, stored_by FROM source');
	expect(secrets(ledger)).toHaveLength(3);
	expect(await cleanOldPictures(ledger)).toEqual({ cleaned: 3, left: 0 });
	expect(secrets(ledger)).toEqual([]);
	expect(stored(ledger)).toEqual(namedSources(ledger));
	expect(rowsOf(ledger, 'SELECT DISTINCT stored_ms, stored_by FROM source')).toEqual(storedMs);
	const clean = cleanPicture(PHOTO, 'image/jpeg')!;
	const file = attachmentFile(ledger, ids[0])!;
	expect(readFileSync(file.path).equals(clean)).toBe(true);
	expect(file.bytes).toBe(clean.length);
	expect(listAttachments(ledger, 'build', buildId)).toHaveLength(3);
	const told = historyOf(ledger, 'build', buildId).filter(({ action }) => action === 'cleaned a picture');
	expect(told).toHaveLength(3);
	const changes = told.flatMap((entry) => entry.changes);
	expect(changes).toContainEqual({ what: 'sha256', before: hashOf(PHOTO), after: hashOf(clean) });
	expect(told[0].facts.map(({ value }) => value).join()).toContain('by the program itself');
	const report = await verifyLedger(ledger.folder, { sample: 0, seed: '1' });
	expect(report.parts.flatMap(({ findings }) => findings)).toEqual([]);
});

it('looks at each picture once: the next start costs a query, and what comes later is looked at then', async () => {
	const { ledger, attachOld } = withBuild();
	await attachOld(PHOTO);
	await cleanOldPictures(ledger);
	const [{ sha256 }] = rowsOf(ledger, 'SELECT sha256 FROM source');
	// were it read again it would be found missing
	rmSync(sourcePath(ledger.folder, String(sha256)));
	expect(await cleanOldPictures(ledger)).toEqual({ cleaned: 0, left: 0 });
	await attachOld(webpWith({ exif: true }));
	expect(await cleanOldPictures(ledger)).toEqual({ cleaned: 1, left: 0 });
});

it('leaves what is clean, no picture, or broken as it is, and what was handed in as a ride as well', async () => {
	const test = withBuild();
	const { ledger, actor, buildId, attachOld } = test;
	const subject = { subject: 'build' as const, subjectId: buildId };
	const cleanId = await attachFile(ledger, actor, {
		...subject,
		name: 'a.jpg',
		bytes: jpegWith({ orientation: 3 })
	});
	const before = rowsOf(ledger, 'SELECT * FROM source');
	const sheet = Buffer.from(`%PDF-1.7 ${SECRET}`);
	const broken = PHOTO.subarray(0, 200);
	await keptAsItCame(ledger, actor, subject, sheet);
	await attachOld(broken);
	await attachOld(PHOTO);
	// as though the very same bytes had been handed in for a ride
	await storeSomething(test);
	ledger.database.prepare('UPDATE import SET sha256 = ?').run(hashOf(PHOTO));
	expect(await cleanOldPictures(ledger)).toEqual({ cleaned: 1, left: 1 });
	expect(rowsOf(ledger, 'SELECT * FROM source')).toEqual(expect.arrayContaining(before));
	expect(attachmentFile(ledger, cleanId)).not.toBeNull();
	for (const bytes of [sheet, broken, PHOTO])
		expect(existsSync(sourcePath(ledger.folder, hashOf(bytes)))).toBe(true);
	expect(secrets(ledger)).toHaveLength(3);
});

it('one picture of two things stays one file, and what was erased does not come back', async () => {
	const { ledger, actor, attachOld } = withBuild();
	const other = createBuild(ledger, actor, { name: 'C', description: '' });
	await attachOld(PHOTO);
	await attachOld(PHOTO, other);
	expect(await cleanOldPictures(ledger)).toEqual({ cleaned: 1, left: 0 });
	expect(stored(ledger)).toHaveLength(1);
	expect(rowsOf(ledger, 'SELECT DISTINCT sha256 FROM attachment')).toHaveLength(1);
	const erased = jpegWith({ orientation: 1 });
	await attachOld(erased);
	ledger.database
		.prepare("INSERT INTO erased_source VALUES (?, 0, ?, 'asked for')")
		.run(hashOf(erased), actor.personId);
	rmSync(sourcePath(ledger.folder, hashOf(erased)));
	expect(await cleanOldPictures(ledger)).toEqual({ cleaned: 0, left: 0 });
	expect(stored(ledger)).toHaveLength(1);
});

it('removes the old file also where the program was ended before it could', async () => {
	const { ledger, attachOld } = withBuild();
	await attachOld(PHOTO);
	await cleanOldPictures(ledger);
	const path = sourcePath(ledger.folder, hashOf(PHOTO));
	mkdirSync(dirname(path), { recursive: true });
	writeFileSync(path, PHOTO);
	ledger.database.exec("DELETE FROM setting WHERE name = 'cleanPicturesUpTo'");
	await cleanOldPictures(ledger);
	expect(existsSync(path)).toBe(false);
});
