import { createHash } from 'node:crypto';
import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { open, type FileHandle } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import {
	appendToUpload,
	createUpload,
	findImport,
	finishUpload,
	openLedger,
	recoverUploads,
	type Ledger
} from '$lib/server';
import { finishErasures } from '$lib/server/erasure/finishErasures';
import { archivePath, dropArchiveBeside } from '$lib/server/store/archivePlace';
import { sourcePath } from '$lib/server/store/sourceStore';
import { finishArchive, recordedMembers, takeNextArchive } from '$lib/server/unpack/archiveQueue';
import { recordMember } from '$lib/server/unpack/recordMember';
import type { MemberOutcome } from '../../src/jobs/unpack/messages';
import { zipBytes } from '../jobs/unpack/zipBytes';
import { freshFolder, freshLedger, rowsOf, type TestLedger } from './testLedger';

vi.mock('node:fs/promises', async (original) => {
	const real = await original<typeof import('node:fs/promises')>();
	return { ...real, open: vi.fn(real.open) };
});

const ZIP = zipBytes([{ name: 'a.csv', content: 'x' }]);
const FACTS = { member: 0, name: 'a.fit', bytes: 4 };
const shaOf = (bytes: Uint8Array | string) => createHash('sha256').update(bytes).digest('hex');

async function* from(bytes: Uint8Array) {
	yield bytes;
}

/** an archive that the runner of this test has taken */
async function taken({ ledger, actor, holder }: TestLedger) {
	const { id } = await createUpload(ledger, actor, { name: 'rides.zip', size: ZIP.length });
	await appendToUpload(ledger, id, 0, from(ZIP));
	const { importId } = await finishUpload(ledger, actor, id);
	return { importId, archive: takeNextArchive(ledger, holder)! };
}

/** a file as the child process leaves it */
function written(folder: string, content = 'ride'): MemberOutcome {
	const path = join(folder, 'incoming', 'archive-1-0');
	writeFileSync(path, content);
	return { kind: 'written', path, sha256: shaOf(content), bytes: content.length };
}

/** waits for the disk that have begun, each with what it is for and its end */
let syncs: { path: string; end: () => void }[] = [];
/** from now on every wait for the disk lasts until the test ends it */
function holdSyncs(): void {
	syncs = [];
	vi.mocked(open).mockImplementation(async (path) => {
		const sync = () => new Promise<void>((resolve) => syncs.push({ path: String(path), end: resolve }));
		return { sync, datasync: sync, close: async () => {} } as unknown as FileHandle;
	});
}
beforeEach(async () => {
	const real = await vi.importActual<typeof import('node:fs/promises')>('node:fs/promises');
	vi.mocked(open).mockImplementation(real.open);
});
const begun = (count: number) => vi.waitFor(() => expect(syncs).toHaveLength(count), { timeout: 30_000 });

describe('a file of an archive', () => {
	it('gets its row when the disk has its name, and nothing else waits meanwhile', async () => {
		const test = freshLedger();
		const { ledger, holder, actor } = test;
		const { archive } = await taken(test);
		holdSyncs();
		const recorded = recordMember(ledger, holder, actor, archive, FACTS, written(ledger.folder));
		await begun(1);
		expect(syncs[0].path).toBe(join(ledger.folder, 'sources', shaOf('ride').slice(0, 2)));
		expect(existsSync(sourcePath(ledger.folder, shaOf('ride')))).toBe(true);
		// the event loop turns while the disk is waited for
		await new Promise((resolve) => setImmediate(resolve));
		expect(recordedMembers(ledger, archive.id)).toEqual([]);
		syncs[0].end();
		expect(await recorded).toBe(true);
		expect(recordedMembers(ledger, archive.id)).toEqual([0]);
		expect(syncs).toHaveLength(1);
	});

	it('writes nothing more where the program stops while the disk is waited for', async () => {
		const test = freshLedger();
		const { ledger, holder, actor } = test;
		const { archive } = await taken(test);
		holdSyncs();
		let isStopped = false;
		const outcome = written(ledger.folder);
		const recorded = recordMember(ledger, holder, actor, archive, FACTS, outcome, () => isStopped);
		await begun(1);
		isStopped = true;
		syncs[0].end();
		expect(await recorded).toBe(false);
		expect(recordedMembers(ledger, archive.id)).toEqual([]);
	});

	it('whose rows a power cut takes is unpacked again and counts once', async () => {
		const test = freshLedger();
		const { ledger, holder, actor } = test;
		const { archive, importId } = await taken(test);
		const after = freshFolder();
		// what the disk has of the ledger before the rows; names and bytes of files it has when they are recorded
		for (const file of ['ledger.sqlite', 'ledger.sqlite-wal'])
			cpSync(join(ledger.folder, file), join(after, file));
		await recordMember(ledger, holder, actor, archive, FACTS, written(ledger.folder));
		for (const part of ['sources', 'archives', 'incoming'])
			cpSync(join(ledger.folder, part), join(after, part), { recursive: true });
		const again = openLedger(after, { migrate: true });
		try {
			expect(recordedMembers(again, importId)).toEqual([]);
			await recoverUploads(again);
			const taken = takeNextArchive(again, holder)!;
			expect(await recordMember(again, holder, actor, taken, FACTS, written(after))).toBe(true);
			await finishArchive(again, taken, null);
			expect(rowsOf(again, 'SELECT stage FROM import ORDER BY id')).toEqual([
				{ stage: 'unpacked' },
				{ stage: 'waiting' }
			]);
			expect(rowsOf(again, 'SELECT sha256 FROM source')).toEqual([{ sha256: shaOf('ride') }]);
			expect(readFileSync(sourcePath(after, shaOf('ride')), 'utf8')).toBe('ride');
			expect(readdirSync(join(after, 'archives'))).toEqual([]);
		} finally {
			again.close();
		}
	});
});

describe('the bytes of an archive', () => {
	it('stay until the disk has every row that was made of them', async () => {
		const test = freshLedger();
		const { ledger } = test;
		const { archive, importId } = await taken(test);
		holdSyncs();
		const finished = finishArchive(ledger, archive, null);
		await begun(1);
		expect(syncs[0].path).toMatch(/ledger\.sqlite-wal$/);
		expect(findImport(ledger, importId)?.stage).toBe('unpacked');
		expect(existsSync(archivePath(ledger.folder, archive.sha256))).toBe(true);
		syncs[0].end();
		await finished;
		expect(existsSync(archivePath(ledger.folder, archive.sha256))).toBe(false);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([]);
	});

	it('stay where the program stops meanwhile: its ledger is closed by then', async () => {
		const test = freshLedger();
		const { archive } = await taken(test);
		await finishArchive(test.ledger, archive, null, () => true);
		expect(existsSync(archivePath(test.ledger.folder, archive.sha256))).toBe(true);
	});

	it('lose their name at once, so that the same archive can come again while they go', async () => {
		const test = freshLedger();
		const { ledger } = test;
		const { archive } = await taken(test);
		ledger.database.exec("UPDATE import SET stage = 'unpacked'");
		const gone = dropArchiveBeside(ledger, archive.sha256);
		expect(existsSync(archivePath(ledger.folder, archive.sha256))).toBe(false);
		await taken(test);
		await gone;
		expect(readFileSync(archivePath(ledger.folder, archive.sha256))).toEqual(ZIP);
	});

	it.each([
		['the next start', (ledger: Ledger) => recoverUploads(ledger)],
		['an erasure', async (ledger: Ledger) => void finishErasures(ledger)]
	])('that a stop left nameless go with %s', async (_, clearUp) => {
		const { ledger } = freshLedger();
		const left = join(ledger.folder, 'incoming', 'going-1');
		writeFileSync(left, ZIP);
		await clearUp(ledger);
		expect(existsSync(left)).toBe(false);
	});
});
