import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
	actorOf,
	attachFile,
	attachmentFile,
	choosePerson,
	eraseRider,
	erasureOf,
	listAttachments,
	listRides,
	makeBackup,
	openLedger,
	programmeRows,
	putBackAttachment,
	restoreBackup,
	retryImport,
	rideStages,
	rideView,
	storeFile,
	verifyLedger,
	versionState,
	withdrawAttachment
} from '$lib/server';
import { finishErasures } from '$lib/server/erasure/finishErasures';
import { listDerivations } from '$lib/server/queue/derivations';
import { takeNextImport } from '$lib/server/queue/importQueue';
import { saveChannels } from '$lib/server/queue/saveChannels';
import { sourcePath } from '$lib/server/store/sourceStore';
import {
	addRide,
	analysedFile,
	freshFolder,
	freshLedger,
	rowsOf,
	slipAt,
	START_MS,
	storeSomething,
	withHardware,
	type TestLedger
} from '../testLedger';

const CONTENT = 'bytes with where somebody rode';
const FILE_NAME = 'petrasmorningride.fit';

/** a rider with one ride, whose file and name are told apart from all else, beside a ride of the owner */
async function workshop() {
	const test = freshLedger();
	withHardware(test);
	await addRide(test);
	const rider = choosePerson(test.ledger, 'Petra');
	await storeSomething(test, { name: FILE_NAME, content: CONTENT, hints: { riderId: rider.id } });
	const queued = takeNextImport(test.ledger, test.holder)!;
	const { saveImport } = await import('$lib/server/queue/saveImport');
	const rideId = saveImport(
		test.ledger,
		test.holder,
		queued,
		analysedFile({ startedAtMs: START_MS + 5 * 3_600_000, events: [slipAt(50)] })
	)!;
	return { ...test, test, rider, rideId, sha256: queued.sha256, importId: queued.id };
}

/** everything that lies in the data folder, names of files too */
function bytesOf({ ledger }: TestLedger): string {
	return readdirSync(ledger.folder, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => readFileSync(join(entry.parentPath, entry.name), 'latin1'))
		.join('\n');
}

describe('eraseRider', () => {
	it('takes file, traces and file name out of the folder, and leaves figures, events and a tombstone', async () => {
		const { test, ledger, actor, rider, rideId, sha256 } = await workshop();
		const before = { rows: programmeRows(ledger), view: rideView(ledger, rideId)! };
		expect(bytesOf(test)).toContain(FILE_NAME);
		expect(bytesOf(test)).toContain(CONTENT);

		expect(erasureOf(ledger, rider.id)).toMatchObject({ files: [sha256], rides: 1, beingRead: 0 });
		expect(eraseRider(ledger, actor, { personId: rider.id, reason: 'the rider asked for it' })).toMatchObject(
			{
				files: 1,
				rides: 1
			}
		);
		expect(existsSync(sourcePath(ledger.folder, sha256))).toBe(false);
		expect(ledger.channels.prepare('SELECT count(*) FROM channel WHERE sha256 = ?').pluck().get(sha256)).toBe(
			0
		);
		expect(bytesOf(test)).not.toContain(FILE_NAME);
		expect(bytesOf(test)).not.toContain(CONTENT);
		expect(programmeRows(ledger)).toEqual(before.rows);
		const { fileName, ...view } = rideView(ledger, rideId)!;
		expect(fileName).toBe('erased file');
		expect(view).toEqual({ ...before.view, fileName: undefined });
		expect(rideStages(ledger, rideId)!.erased).toMatchObject({ reason: 'the rider asked for it' });
		expect(rowsOf(ledger, 'SELECT sha256, erased_by, reason FROM erased_source')).toEqual([
			{ sha256, erased_by: actor.personId, reason: 'the rider asked for it' }
		]);
		expect(erasureOf(ledger, rider.id)).toMatchObject({ files: [], erasedBefore: 1 });
	});

	it('is known to verify: whole afterwards, damaged when the file lies there again', async () => {
		const { ledger, actor, rider, sha256 } = await workshop();
		eraseRider(ledger, actor, { personId: rider.id, reason: 'asked for' });
		const files = async () =>
			(await verifyLedger(ledger.folder, { sample: 0, seed: '' })).parts.find(
				({ name }) => name === 'files'
			)!;
		expect(await files()).toMatchObject({ state: 'whole', checked: 2 });
		const { mkdirSync, writeFileSync } = await import('node:fs');
		mkdirSync(join(ledger.folder, 'sources', sha256.slice(0, 2)), { recursive: true });
		writeFileSync(sourcePath(ledger.folder, sha256), CONTENT);
		expect((await files()).findings).toMatchObject([{ severity: 'damage', subject: sha256 }]);
		expect(finishErasures(ledger)).toBe(1);
		expect(await files()).toMatchObject({ state: 'whole' });
	});

	it('does not let the same file in again, nor a late result write its traces', async () => {
		const { test, ledger, actor, rider, sha256, importId } = await workshop();
		eraseRider(ledger, actor, { personId: rider.id, reason: 'asked for' });
		async function* bytes() {
			yield Buffer.from(CONTENT);
		}
		const again = await storeFile(ledger, actor, { name: 'x.fit', bytes: bytes() });
		expect(rowsOf(ledger, `SELECT stage, sentence FROM import WHERE id = ${again.importId}`)).toEqual([
			{
				stage: 'already in the ledger',
				sentence: "This very file was erased at its rider's wish and is not taken again."
			}
		]);
		expect(existsSync(sourcePath(ledger.folder, sha256))).toBe(false);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([]);
		saveChannels(ledger, sha256, analysedFile());
		expect(ledger.channels.prepare('SELECT count(*) FROM channel WHERE sha256 = ?').pluck().get(sha256)).toBe(
			0
		);
		expect(takeNextImport(test.ledger, test.holder)).toBeNull();
		ledger.database.prepare("UPDATE import SET stage = 'failed' WHERE id = ?").run(importId);
		expect(() => retryImport(ledger, actor, importId)).toThrow('can be tried again');
	});

	it('takes what the person attached as well, and lets the same bytes not come back', async () => {
		const { test, ledger, actor, rider } = await workshop();
		const { wheelId } = rowsOf(ledger, 'SELECT id AS wheelId FROM wheel')[0] as { wheelId: number };
		// no picture: of those no words are kept in the first place
		const NOTE = Buffer.from('a note with the place where it was taken');
		const attach = (by: typeof actor, name: string, bytes: Uint8Array) =>
			attachFile(ledger, by, { subject: 'wheel', subjectId: wheelId, name, bytes, caption: 'the ring' });
		const own = await attach(actorOf(rider), 'petrasring.txt', NOTE);
		const others = await attach(actor, 'bench.txt', Buffer.concat([NOTE, Buffer.from('another')]));
		withdrawAttachment(ledger, actorOf(rider), { subject: 'wheel', subjectId: wheelId }, own, 'blurred');
		expect(erasureOf(ledger, rider.id)).toMatchObject({ rides: 1, attached: 1 });
		expect(eraseRider(ledger, actor, { personId: rider.id, reason: 'asked for' })).toMatchObject({
			files: 2,
			attached: 1
		});
		expect(bytesOf(test)).not.toContain('petrasring');
		expect(bytesOf(test)).not.toMatch(/where it was taken(?!another)/);
		expect(attachmentFile(ledger, own)).toBeNull();
		expect(() => putBackAttachment(ledger, actor, { subject: 'wheel', subjectId: wheelId }, own)).toThrow(
			'was erased'
		);
		expect(attachmentFile(ledger, others)).not.toBeNull();
		expect(listAttachments(ledger, 'wheel', wheelId)).toMatchObject([
			{ erased: false, fileName: 'bench.txt' },
			{ erased: true, caption: 'the ring', fileName: 'erased file' }
		]);
		await expect(attach(actor, 'again.txt', NOTE)).rejects.toThrow('not taken again');
		const report = await verifyLedger(ledger.folder, { sample: 0, seed: '' });
		expect(report.parts.filter(({ state }) => state === 'damaged')).toEqual([]);
		expect(() => ledger.database.exec("UPDATE trail SET detail = '{}' WHERE action = 'attached'")).toThrow(
			'never changed'
		);
	});

	it('leaves nothing that waits to be computed again', async () => {
		const { ledger, actor, rider, rideId } = await workshop();
		eraseRider(ledger, actor, { personId: rider.id, reason: 'asked for' });
		ledger.database.prepare("UPDATE result SET bike_facts = 'other' WHERE ride_id = ?").run(rideId);
		expect(listDerivations(ledger).map((one) => one.rideId)).not.toContain(rideId);
		expect(rideStages(ledger, rideId)!.again).toBeNull();
		expect(versionState(ledger)).toMatchObject({ missing: 0 });
	});

	it('lets the trail lose the name of an erased file and nothing else', async () => {
		const { ledger, actor, rider, rideId, sha256 } = await workshop();
		const change = (set: string, where: string) => () =>
			ledger.database.exec(`UPDATE trail SET ${set} WHERE ${where}`);
		const ofSource = `subject = 'source' AND subject_id = '${sha256}'`;
		expect(change("detail = json_remove(detail, '$.fileName')", ofSource)).toThrow('never changed');
		eraseRider(ledger, actor, { personId: rider.id, reason: 'asked for' });
		const entries = rowsOf(
			ledger,
			`SELECT action, detail FROM trail WHERE (${ofSource}) OR (subject = 'ride' AND subject_id = '${rideId}') ORDER BY id`
		);
		expect(entries.map(({ action }) => action)).toEqual(['stored', 'handed in', 'erased']);
		expect(entries[0].detail).toBe('{}');
		expect(change('at_ms = 0', ofSource)).toThrow('never changed');
		expect(change("detail = '{}'", "subject = 'ride'")).toThrow('never changed');
		expect(() => ledger.database.exec('DELETE FROM erased_source')).toThrow('never removed');
		expect(() => ledger.database.exec("UPDATE erased_source SET reason = 'none'")).toThrow('never changed');
	});

	it('names the backups made before; the next one takes the file out, and an earlier one does not bring it back', async () => {
		const { ledger, actor, clock, rider, sha256 } = await workshop();
		const target = join(freshFolder(), 'copies');
		const { generation } = await makeBackup(ledger, actor, target);
		expect(existsSync(sourcePath(target, sha256))).toBe(true);
		const { copies } = eraseRider(ledger, actor, { personId: rider.id, reason: 'asked for' });
		expect(copies).toMatchObject([{ what: 'backup', where: target }]);
		clock.ms += 3_600_000;
		expect(await makeBackup(ledger, actor, target)).toMatchObject({ sources: 1, missing: [] });
		expect(existsSync(sourcePath(target, sha256))).toBe(false);
		for (const path of [target, generation]) {
			const restored = openLedger(freshFolder(), { migrate: true });
			expect(await restoreBackup(restored, path)).toMatchObject({ files: 1, missing: 0 });
			expect(rowsOf(restored, 'SELECT sha256 FROM erased_source')).toEqual([{ sha256 }]);
			const report = await verifyLedger(restored.folder, { sample: 0, seed: '' });
			expect(report.parts.filter(({ state }) => state === 'damaged')).toEqual([]);
			restored.close();
		}
	});

	it('is an owner’s, wants a reason without the name, and waits for files that are being read', async () => {
		const { test, ledger, actor, rider } = await workshop();
		const asRider = actorOf(rider);
		expect(() => eraseRider(ledger, asRider, { personId: rider.id, reason: 'asked for' })).toThrow(
			'Only an owner'
		);
		expect(() => eraseRider(ledger, actor, { personId: rider.id, reason: '' })).toThrow('reason');
		expect(() => eraseRider(ledger, actor, { personId: rider.id, reason: 'petra asked' })).toThrow(
			'without the name'
		);
		expect(() => eraseRider(ledger, actor, { personId: 999, reason: 'asked for' })).toThrow('no such person');
		await storeFile(ledger, asRider, {
			name: 'b.fit',
			bytes: (async function* () {
				yield Buffer.from('b');
			})()
		});
		expect(() => eraseRider(ledger, actor, { personId: rider.id, reason: 'asked for' })).toThrow(
			'being read'
		);
		expect(rowsOf(ledger, 'SELECT 1 FROM erased_source')).toEqual([]);
		takeNextImport(test.ledger, test.holder);
		ledger.database.exec("UPDATE import SET stage = 'refused' WHERE stage = 'analysing'");
		// files that became no ride go too
		expect(eraseRider(ledger, actor, { personId: rider.id, reason: 'asked for' })).toMatchObject({
			files: 2,
			rides: 1
		});
		expect(() => eraseRider(ledger, actor, { personId: rider.id, reason: 'asked for' })).toThrow('no files');
		expect(listRides(ledger, { page: 1, pageSize: 10 }).total).toBe(2);
	});
});
