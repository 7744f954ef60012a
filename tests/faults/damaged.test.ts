import Database from 'better-sqlite3';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { VerifyReport } from '$lib/server';
import { builtProgram, smallRides, start, storedSources, until } from './program';

let build: string;
let home: string;
let first: string;
let copies = 0;

beforeAll(async () => {
	build = await builtProgram();
	home = mkdtempSync(join(tmpdir(), 'slip-ledger-damaged-'));
	first = join(home, 'first');
	expect((await start(build, 'import', ['--data', first, ...smallRides(2)]).ended).code).toBe(0);
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

function copy(): string {
	const folder = join(home, `copy-${copies++}`);
	cpSync(first, folder, { recursive: true });
	return folder;
}

/** flips bytes in the middle of a table's first page */
function damageTable(folder: string, file: string, table: string): void {
	const path = join(folder, file);
	const database = new Database(path);
	database.pragma('wal_checkpoint(TRUNCATE)');
	const root = database.prepare('SELECT rootpage FROM sqlite_master WHERE name = ?').pluck().get(table);
	const pageBytes = database.pragma('page_size', { simple: true }) as number;
	database.close();
	const bytes = readFileSync(path);
	const from = (Number(root) - 1) * pageBytes;
	for (let i = from; i < from + 64; i++) bytes[i] ^= 0xff;
	writeFileSync(path, bytes);
}

async function verify(folder: string, args: string[] = []) {
	const { code, output } = await start(build, 'verify', [
		'--data',
		folder,
		'--json',
		'--sample',
		'1',
		...args
	]).ended;
	return { code, report: JSON.parse(output) as VerifyReport };
}
/** what the server has made again so far; verify itself is asked once, at the end */
function ridesWithTraces(folder: string): number {
	const database = new Database(join(folder, 'channels.sqlite'), { readonly: true });
	try {
		return database.prepare<[], number>('SELECT count(DISTINCT sha256) FROM channel').pluck().get()!;
	} finally {
		database.close();
	}
}

const stateOf = (report: VerifyReport) =>
	Object.fromEntries(report.parts.map(({ name, state }) => [name, state]));

describe('verify, on a folder that is damaged', () => {
	it('names the table with a corrupt page, and which parts are whole all the same', async () => {
		const folder = copy();
		damageTable(folder, 'ledger.sqlite', 'slip_event');
		const { code, report } = await verify(folder);
		expect(code).toBe(1);
		const { findings } = report.parts[0];
		expect(findings.filter(({ severity }) => severity === 'damage').map(({ subject }) => subject)).toContain(
			'slip_event'
		);
		expect(findings).toContainEqual({
			severity: 'note',
			subject: 'verdict',
			sentence: 'The table verdict is whole.'
		});
		expect(stateOf(report)).toMatchObject({
			ledger: 'damaged',
			traces: 'whole',
			files: 'whole',
			decisions: 'whole'
		});
		const backup = await start(build, 'backup', ['--data', folder, join(home, 'of-damaged')]).ended;
		expect(backup.code).toBe(1);
		expect(backup.output).toContain('no backup was made of it');
	});

	it('tells corrupt traces from a whole ledger', async () => {
		const folder = copy();
		damageTable(folder, 'channels.sqlite', 'channel_chunk');
		const { code, report } = await verify(folder);
		expect(code).toBe(1);
		expect(stateOf(report)).toMatchObject({
			ledger: 'whole',
			traces: 'damaged',
			files: 'whole',
			sums: 'whole'
		});
	});

	it('says that traces are made again when their file is taken away, and they are', async () => {
		const folder = copy();
		for (const ending of ['', '-wal', '-shm'])
			rmSync(join(folder, `channels.sqlite${ending}`), { force: true });
		expect((await verify(folder)).report.parts[1].state).toBe('damaged');
		expect((await start(build, 'import', ['--data', folder, ...smallRides(3).slice(2)]).ended).code).toBe(0);
		const server = start(build, 'serve', ['--data', folder, '--port', '0']);
		await until('the traces of all rides', () => ridesWithTraces(folder) === 3, 90_000);
		server.child.kill('SIGTERM');
		await server.ended;
		const { code, report } = await verify(folder);
		expect(report.parts[1]).toMatchObject({ state: 'whole', notes: 0, checked: 3 });
		expect(code).toBe(0);
	});

	it('names a missing file by its hash; its ride keeps its figures, and the same file handed in again mends it', async () => {
		const folder = copy();
		const [missing] = storedSources(folder);
		rmSync(join(folder, 'sources', missing.slice(0, 2), missing));
		const { code, report } = await verify(folder);
		expect(code).toBe(1);
		expect(report.parts.flatMap(({ findings }) => findings).map(({ subject }) => subject)).toEqual([missing]);
		expect(stateOf(report)).toMatchObject({ files: 'damaged', sums: 'whole', ledger: 'whole' });
		expect((await start(build, 'import', ['--data', folder, ...smallRides(2)]).ended).code).toBe(0);
		expect((await verify(folder)).code).toBe(0);
	});

	it('the server on a ledger that is no database any more refuses to start in one sentence', async () => {
		const folder = copy();
		for (const ending of ['-wal', '-shm']) rmSync(join(folder, `ledger.sqlite${ending}`), { force: true });
		writeFileSync(join(folder, 'ledger.sqlite'), 'x'.repeat(9000));
		const { code, output } = await start(build, 'serve', ['--data', folder, '--port', '0']).ended;
		expect(code).toBe(1);
		expect(output.trim().split('\n')).toHaveLength(1);
		expect(output).toContain('damaged and was not opened');
		const { report } = await verify(folder);
		expect(stateOf(report)).toMatchObject({ ledger: 'damaged', files: 'whole', sums: 'not checked' });
	});
});
