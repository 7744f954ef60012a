import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { actorOf, choosePerson, ImportRunner, openLedger, storeFile, type Ledger } from '$lib/server';
import { countUnfinishedImports } from '$lib/server/queue/importQueue';
import { newHolder, takeLease } from '$lib/server/queue/lease';
import { ArchiveUnpacker } from '$lib/server/unpack/archiveUnpacker';
import { zipBytes } from '../jobs/unpack/zipBytes';
import { builtProgram, smallRides, start, storedSources, until } from './program';

let build: string;
let rides: Buffer[];
let archive: Buffer;
let folder: string;
let data: string;
let zip: string;
const ledgers: Ledger[] = [];

beforeAll(async () => {
	build = await builtProgram();
	rides = smallRides(3).map((file) => readFileSync(file));
	archive = zipBytes([
		{ name: 'spring/', content: '', stored: true },
		{ name: 'spring/a.fit', content: rides[0] },
		{ name: 'Fahrt über Łódź.fit.gz', content: gzipSync(rides[1]) },
		{ name: 'cat.jpg', content: 'no ride' },
		{ name: '../out.fit', content: rides[2] },
		{ name: 'again.fit', content: rides[0], stored: true }
	]);
});
beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), 'slip-ledger-archive-'));
	data = join(folder, 'data');
	zip = join(folder, 'rides.zip');
	writeFileSync(zip, archive);
});
afterEach(() => {
	for (const ledger of ledgers.splice(0)) ledger.close();
	rmSync(folder, { recursive: true, force: true });
});

const run = (env: Record<string, string> = {}, ...files: string[]) =>
	start(build, 'import', ['--data', data, ...(files.length > 0 ? files : [zip])], env).ended;

function open(): Ledger {
	const ledger = openLedger(data, { migrate: true });
	ledgers.push(ledger);
	return ledger;
}

const lines = (ledger: Ledger) =>
	ledger.database
		.prepare(
			'SELECT member, folder, file_name AS name, stage FROM import WHERE archive_id IS NOT NULL ORDER BY archive_id, member'
		)
		.all();

/** a command waits for its own files alone; this one for whatever is left */
async function readAll(ledger: Ledger): Promise<void> {
	const runner = new ImportRunner(ledger, {
		entry: join(build, 'entries', 'jobs', 'analyseFile.js'),
		unpackEntry: join(build, 'entries', 'jobs', 'unpackArchive.js'),
		lookEveryMs: 50
	});
	runner.start();
	await until('everything to be read', () => countUnfinishedImports(ledger) === 0);
	await runner.stop();
}

const ALL_LINES = [
	{ member: 1, folder: 'spring', name: 'a.fit', stage: 'done' },
	{ member: 2, folder: null, name: 'Fahrt über Łódź.fit.gz', stage: 'done' },
	{ member: 3, folder: null, name: 'cat.jpg', stage: 'left out' },
	{ member: 4, folder: null, name: 'out.fit', stage: 'refused' },
	{ member: 5, folder: null, name: 'again.fit', stage: 'already in the ledger' }
];

describe('an archive of rides', () => {
	it('is unpacked and read, with one line for each file in it', async () => {
		const { code, output } = await run();
		const said = output.trim().split('\n');
		expect(said).toHaveLength(6);
		expect(said[0]).toContain('3 files taken out, 1 left out because they are no rides, 1 refused.');
		expect(said[1]).toMatch(/spring\/a\.fit: ride 1, \d+\.\d km/);
		expect(said[2]).toMatch(/Fahrt über Łódź\.fit\.gz: ride 2, /);
		expect(said[3]).toContain('cat.jpg: left out');
		expect(said[4]).toMatch(/out\.fit: refused: .*points out of the archive/);
		expect(said[5]).toContain('again.fit: in the ledger already (ride 1)');
		expect(code).toBe(1);
		const sha = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
		expect(storedSources(data)).toEqual([sha(rides[0]), sha(gzipSync(rides[1]))].sort());
		expect(readdirSync(join(data, 'archives'))).toEqual([]);
		expect(readdirSync(join(data, 'incoming'))).toEqual([]);
		const verified = await start(build, 'verify', ['--data', data]).ended;
		expect(verified.code).toBe(0);
	});

	it('lies in a folder that is imported, and counts once when it is handed in again', async () => {
		const first = await run({}, folder);
		expect(first.output).toContain('ride 2');
		const { output } = await run();
		expect(output.match(/in the ledger already/g)).toHaveLength(3);
		expect(storedSources(data)).toHaveLength(2);
	});

	it('that is damaged is refused in one line, and nothing of it stays', async () => {
		writeFileSync(zip, archive.subarray(0, archive.length - 30));
		const { code, output } = await run();
		expect(output).toMatch(/^.*rides\.zip: refused: This archive is damaged .*\n$/);
		expect(code).toBe(1);
		expect(readdirSync(join(data, 'archives'))).toEqual([]);
	});
});

describe('an archive whose unpacking is killed', () => {
	it.each([
		'archive-stored',
		'archive-moved',
		'member-written',
		'member-moved',
		'member-recorded',
		'archive-recorded',
		'archive-done',
		'archive-aside'
	])('at "%s" ends in the same ledger', async (stage) => {
		const killed = await run({ SLIP_LEDGER_FAULT: stage });
		expect(killed.signal).toBe('SIGKILL');
		const verified = await start(build, 'verify', ['--data', data]).ended;
		expect(verified.code).toBe(0);
		// what was accepted is gone on with by whoever comes next; what was not is handed in again
		const accepted = !['archive-stored', 'archive-moved'].includes(stage);
		await run({}, ...(accepted ? [smallRides(3)[2]] : [zip]));
		const ledger = open();
		await readAll(ledger);
		expect(lines(ledger)).toEqual(ALL_LINES);
		expect(storedSources(data)).toHaveLength(accepted ? 3 : 2);
		expect(ledger.database.prepare('SELECT count(*) FROM ride').pluck().get()).toBe(accepted ? 3 : 2);
		expect(ledger.database.prepare("SELECT stage FROM import WHERE file_name = 'rides.zip'").all()).toEqual([
			{ stage: 'unpacked' }
		]);
		// what was killed before it was accepted lies there for two days
		if (stage !== 'archive-stored') expect(readdirSync(join(data, 'incoming'))).toEqual([]);
	});
});

describe('the process that unpacks', () => {
	/** an unpacker with a child of the test's own making */
	async function unpackWith(script: string, limits = {}) {
		const entry = join(folder, 'child.cjs');
		writeFileSync(entry, script);
		const ledger = open();
		const actor = actorOf(choosePerson(ledger, 'Tester'));
		const holder = newHolder();
		takeLease(ledger, 'runner', holder);
		async function* bytes() {
			yield archive;
		}
		const { importId } = await storeFile(ledger, actor, { name: basename(zip), bytes: bytes() });
		const unpacker = new ArchiveUnpacker(
			ledger,
			holder,
			() => entry,
			() => {},
			{
				wallMs: 10_000,
				residentBytes: 400 * 2 ** 20,
				checkEveryMs: 50,
				...limits
			}
		);
		const stage = () =>
			ledger.database.prepare('SELECT stage FROM import WHERE id = ?').pluck().get(importId) as string;
		const timer = setInterval(() => unpacker.look(), 20);
		await until('the archive to be settled', () => stage() !== 'unpacking');
		clearInterval(timer);
		await unpacker.stop();
		return { stage: stage(), lines: lines(ledger), ledger };
	}
	/** says that it is at the first file that is not recorded yet, then does something; the second is left out */
	const atFirst = (deed: string) => `process.on('message', (m) => {
		const at = (member) => ({ member, name: member + '.fit', bytes: 1 });
		if (m.kind === 'next') return process.send({ kind: 'end' });
		if (m.recorded.length) return process.send({ kind: 'member', facts: at(1), outcome: { kind: 'left out', sentence: 'No.' } });
		process.send({ kind: 'begun', facts: at(0) }, () => { ${deed} });
	});`;

	it.each([
		['ends at a file', 'process.exit(3)', {}],
		['hangs at a file', 'for (;;);', { wallMs: 4000 }],
		[
			'fills its memory at a file',
			'globalThis.kept = Buffer.alloc(300 * 2 ** 20, 1)',
			{ residentBytes: 200 * 2 ** 20 }
		]
	])('that %s loses that file alone', async (_, deed, limits) => {
		const { stage, lines } = await unpackWith(atFirst(deed), limits);
		expect(stage).toBe('unpacked');
		expect(lines).toMatchObject([
			{ member: 0, stage: 'refused' },
			{ member: 1, stage: 'left out' }
		]);
	});

	it('that always ends before any file is given up after three attempts, and the archive is kept', async () => {
		const { stage, ledger } = await unpackWith('process.exit(1)');
		expect(stage).toBe('failed');
		expect(readdirSync(join(data, 'archives'))).toHaveLength(1);
		expect(ledger.database.prepare('SELECT sentence FROM import').pluck().get()).toContain('3 times');
	});
});
