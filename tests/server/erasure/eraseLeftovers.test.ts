import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
	actorOf,
	appendToUpload,
	choosePerson,
	createUpload,
	eraseRider,
	erasureOf,
	findImport,
	finishUpload,
	giveUpArchive,
	recoverUploads,
	retryImport,
	verifyLedger
} from '$lib/server';
import { finishErasures } from '$lib/server/erasure/finishErasures';
import { GIVEN_UP_AFTER_MS } from '$lib/server/unpack/giveUpArchive';
import { archivePath, memberPlace } from '$lib/server/store/archivePlace';
import { takeNextArchive } from '$lib/server/unpack/archiveQueue';
import { recordMember } from '$lib/server/unpack/recordMember';
import { zipBytes } from '../../jobs/unpack/zipBytes';
import { createHash } from 'node:crypto';
import { freshLedger, rowsOf, type TestLedger } from '../testLedger';
import type { Actor, RideHints } from '$lib/server';

const NAME = 'Petra';
const SERIAL = 'serial-3914425';
/** stored, not deflated: what lies on disk can be searched for */
const zip = (serial: string) =>
	zipBytes([
		{ name: `${NAME}/morning.fit`, content: `ride of ${serial}`, stored: true },
		{ name: `${NAME}/cat.jpg`, content: 'no ride', stored: true }
	]);

async function* from(bytes: Uint8Array) {
	yield bytes;
}

/** everything that lies in the data folder, names of files too */
function everything({ ledger }: TestLedger): string {
	return readdirSync(ledger.folder, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => `${entry.name}\n${readFileSync(join(entry.parentPath, entry.name), 'latin1')}`)
		.join('\n');
}

/** an archive of which one file was taken out before unpacking broke off for good */
async function failedArchive(
	test: TestLedger,
	by: Actor,
	{ serial = SERIAL, hints = {} }: { serial?: string; hints?: RideHints } = {}
) {
	const { ledger, holder } = test;
	const bytes = zip(serial);
	const { id } = await createUpload(ledger, by, { name: `${NAME}.zip`, size: bytes.length, hints });
	await appendToUpload(ledger, id, 0, from(bytes));
	const { importId } = await finishUpload(ledger, by, id);
	const archive = takeNextArchive(ledger, holder)!;
	const content = `ride of ${serial}`;
	const path = `${memberPlace(ledger, importId)}0`;
	writeFileSync(path, content);
	const sha256 = createHash('sha256').update(content).digest('hex');
	const facts = { member: 0, name: `${NAME}/morning.fit`, bytes: content.length };
	await recordMember(ledger, holder, by, archive, facts, {
		kind: 'written',
		path,
		sha256,
		bytes: content.length
	});
	await recordMember(
		ledger,
		holder,
		by,
		archive,
		{ member: 1, name: `${NAME}/cat.jpg`, bytes: 7 },
		{
			kind: 'left out',
			sentence: 'No ride.'
		}
	);
	// the next file was half written when the process ended
	writeFileSync(`${memberPlace(ledger, importId)}2`, `half of ${serial}`);
	for (let i = 0; i < 4; i++) takeNextArchive(ledger, holder);
	expect(findImport(ledger, importId)?.stage).toBe('failed');
	// what was taken out is read; here it is no ride
	ledger.database.exec("UPDATE import SET stage = 'refused' WHERE stage = 'waiting'");
	return { importId, sha256, archivePath: archivePath(ledger.folder, archive.sha256) };
}

describe('an archive that failed', () => {
	it('is given up by a person: what was taken out stays, its bytes go', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const failed = await failedArchive(test, actor);
		giveUpArchive(ledger, actor, failed.importId);
		expect(existsSync(failed.archivePath)).toBe(false);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([]);
		expect(findImport(ledger, failed.importId)).toMatchObject({ stage: 'refused' });
		expect(findImport(ledger, failed.importId)?.sentence).toMatch(/given up: 1 file taken out, 1 left out/);
		expect(rowsOf(ledger, 'SELECT sha256 FROM source')).toEqual([{ sha256: failed.sha256 }]);
		expect(() => giveUpArchive(ledger, actor, failed.importId)).toThrow('Only an archive that failed');
		expect(() => retryImport(ledger, actor, failed.importId)).toThrow('tried again');
		const { parts } = await verifyLedger(ledger.folder, { sample: 0, seed: '' });
		expect(parts.flatMap(({ findings }) => findings)).toEqual([]);
	});

	it('gives its bytes back by itself after two weeks without a try, and not before', async () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		const failed = await failedArchive(test, actor);
		clock.ms += GIVEN_UP_AFTER_MS - 1000;
		await recoverUploads(ledger);
		expect(existsSync(failed.archivePath)).toBe(true);
		clock.ms += 2000;
		await recoverUploads(ledger);
		expect(existsSync(failed.archivePath)).toBe(false);
		expect(findImport(ledger, failed.importId)?.stage).toBe('refused');
	});
});

describe('an erasure', () => {
	it('reaches archives that failed, uploads that broke off and names of what became no ride', async () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		const rider = actorOf(choosePerson(ledger, 'Rider'));
		const failed = await failedArchive(test, rider);
		const { id } = await createUpload(ledger, rider, { name: `${NAME} 2.fit`, size: 100 });
		await appendToUpload(ledger, id, 0, from(Buffer.from(`half of ${SERIAL}`)));
		const erase = () => eraseRider(ledger, actor, { personId: rider.personId, reason: 'asked for' });
		expect(erase).toThrow('still coming in');
		clock.ms += 120_000;
		for (const word of [NAME, SERIAL]) expect(everything(test)).toContain(word);
		expect(erasureOf(ledger, rider.personId)).toMatchObject({
			files: [failed.sha256],
			leftovers: { archives: [{ importId: failed.importId }], uploads: [id], named: 2 },
			beingRead: 0
		});
		expect(erase()).toMatchObject({ files: 1, leftovers: 4 });
		for (const word of [NAME, SERIAL]) expect(everything(test)).not.toContain(word);
		expect(existsSync(failed.archivePath)).toBe(false);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([]);
		expect(erase).toThrow('no files');
		const { parts } = await verifyLedger(ledger.folder, { sample: 0, seed: '' });
		expect(parts.filter(({ state }) => state === 'damaged')).toEqual([]);
	});

	it('leaves no name behind where no byte came', async () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		const rider = actorOf(choosePerson(ledger, 'Rider'));
		await createUpload(ledger, rider, { name: `${NAME}.fit`, size: 100 });
		clock.ms += 120_000;
		expect(everything(test)).toContain(NAME);
		expect(eraseRider(ledger, actor, { personId: rider.personId, reason: 'asked for' })).toMatchObject({
			files: 0,
			leftovers: 1
		});
		expect(everything(test)).not.toContain(NAME);
	});

	it('that broke off before the bytes were gone is brought to its end at the next start', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const rider = actorOf(choosePerson(ledger, 'Rider'));
		const failed = await failedArchive(test, rider);
		const bytes = readFileSync(failed.archivePath);
		eraseRider(ledger, actor, { personId: rider.personId, reason: 'asked for' });
		writeFileSync(failed.archivePath, bytes);
		writeFileSync(`${memberPlace(ledger, failed.importId)}7`, SERIAL);
		finishErasures(ledger);
		for (const word of [NAME, SERIAL]) expect(everything(test)).not.toContain(word);
	});

	it("takes an archive that others handed in for the rider, or that holds one of the rider's files; no other", async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const rider = choosePerson(ledger, 'Rider');
		const forRider = await failedArchive(test, actor, { hints: { riderId: rider.id } });
		const holding = await failedArchive(test, actor, { serial: 'serial-of-a-ride' });
		const others = await failedArchive(test, actor, { serial: 'serial-of-another' });
		// one of the files in the second turned out to be the rider's
		ledger.database
			.prepare(
				`INSERT INTO ride (sha256, file_name, format, started_ms, duration_s, rider_id, created_ms)
				VALUES (?, 'a', 'fit', 0, 1, ?, 0)`
			)
			.run(holding.sha256, rider.id);
		eraseRider(ledger, actor, { personId: rider.id, reason: 'asked for' });
		expect([forRider, holding, others].map((one) => existsSync(one.archivePath))).toEqual([
			false,
			false,
			true
		]);
		expect(everything(test)).not.toContain('serial-of-a-ride');
		expect(everything(test)).toContain('serial-of-another');
		expect(findImport(ledger, others.importId)).toMatchObject({ stage: 'failed', fileName: `${NAME}.zip` });
	});

	it('waits for an archive that is unpacked just now', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const rider = actorOf(choosePerson(ledger, 'Rider'));
		const failed = await failedArchive(test, rider);
		retryImport(ledger, rider, failed.importId);
		expect(() => eraseRider(ledger, actor, { personId: rider.personId, reason: 'asked for' })).toThrow(
			'1 files of P2 are still'
		);
	});
});
