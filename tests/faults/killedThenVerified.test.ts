import Database from 'better-sqlite3';
import { cpSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { migrate } from '$lib/server/ledger/migrate';
import { LEDGER_MIGRATIONS } from '$lib/server/ledger/migrations';
import type { VerifyReport } from '$lib/server';
import { builtProgram, smallRides, start, storedSources, until } from './program';

/** Each step at which a kill is tried, and after it: what `verify` says, and what the next run makes of it. */
let build: string;
let home: string;
/** a ledger with two rides and one backup of it */
let first: string;
let backups: string;
let folders = 0;

beforeAll(async () => {
	build = await builtProgram();
	home = mkdtempSync(join(tmpdir(), 'slip-ledger-killed-'));
	first = join(home, 'first');
	backups = join(home, 'backups');
	await succeeds('import', ['--data', first, ...smallRides(2)]);
	await succeeds('backup', ['--data', first, backups]);
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

async function succeeds(command: string, args: string[]): Promise<string> {
	const { code, output } = await start(build, command, args).ended;
	expect({ command, code, output }).toMatchObject({ command, code: 0 });
	return output;
}

async function killed(command: string, args: string[], stage: string): Promise<void> {
	const { signal, output } = await start(build, command, args, { SLIP_LEDGER_FAULT: stage }).ended;
	expect({ signal, output }).toMatchObject({ signal: 'SIGKILL' });
}

async function verify(folder: string): Promise<VerifyReport & { code: number | null }> {
	const { code, output } = await start(build, 'verify', ['--data', folder, '--json', '--sample', '1']).ended;
	return { ...(JSON.parse(output) as VerifyReport), code };
}

const damagesOf = (report: VerifyReport) =>
	report.parts.flatMap(({ name, findings }) =>
		findings.filter(({ severity }) => severity === 'damage').map(({ subject }) => `${name}: ${subject}`)
	);

/** a folder of this name's own, with a copy of what lies in another one */
function copyOf(folder: string): string {
	const copy = join(home, `copy-${folders++}`);
	cpSync(folder, copy, { recursive: true });
	return copy;
}

function rides(folder: string): unknown[] {
	const database = new Database(join(folder, 'ledger.sqlite'), { readonly: true });
	try {
		return database.prepare('SELECT sha256, started_ms, duration_s FROM ride ORDER BY sha256').all();
	} finally {
		database.close();
	}
}

describe('verify, after an import was killed', () => {
	it.each(['source-stored', 'source-moved', 'leased', 'analysed', 'channels-written', 'done'])(
		'at "%s", says that all that was taken is whole; the next run takes the rest',
		async (stage) => {
			const folder = copyOf(first);
			const args = ['--data', folder, ...smallRides(3).slice(2)];
			await killed('import', args, stage);
			const report = await verify(folder);
			expect(damagesOf(report)).toEqual([]);
			expect(report.code).toBe(0);
			await succeeds('import', args);
			expect(rides(folder)).toHaveLength(3);
			expect((await verify(folder)).code).toBe(0);
		}
	);
});

describe('a backup that is killed', () => {
	it.each(['backup-ledger', 'backup-sources', 'backup-manifest', 'backup-named', 'backup-done'])(
		'at "%s" leaves earlier ones whole, and the next run makes one of the new state',
		async (stage) => {
			const folder = copyOf(first);
			const target = copyOf(backups);
			await succeeds('import', ['--data', folder, ...smallRides(3).slice(2)]);
			await killed('backup', ['--data', folder, target], stage);
			const named = ['backup-named', 'backup-done'].includes(stage);
			const restored = join(home, `restored-${folders++}`);
			await succeeds('restore', [target, '--data', restored]);
			expect(rides(restored)).toHaveLength(named ? 3 : 2);
			expect((await verify(restored)).code).toBe(0);
			expect((await verify(folder)).code).toBe(0);
			await succeeds('backup', ['--data', folder, target]);
			const again = join(home, `restored-${folders++}`);
			await succeeds('restore', [target, '--data', again]);
			expect(rides(again)).toEqual(rides(folder));
			expect(storedSources(again)).toEqual(storedSources(folder));
		}
	);
});

describe('a restore of a backup that is killed', () => {
	it.each(['restore-read', 'restore-files', 'restore-done'])(
		'at "%s" leaves an empty ledger or the whole one, and can be made again',
		async (stage) => {
			const folder = join(home, `restored-${folders++}`);
			await killed('restore', [backups, '--data', folder], stage);
			const report = await verify(folder);
			expect(damagesOf(report)).toEqual([]);
			expect(rides(folder)).toHaveLength(stage === 'restore-done' ? 2 : 0);
			const again = await start(build, 'restore', [backups, '--data', folder]).ended;
			if (stage === 'restore-done') expect(again.output).toContain('something in this ledger already');
			else expect(again.code).toBe(0);
			expect(rides(folder)).toEqual(rides(first));
			expect((await verify(folder)).code).toBe(0);
		}
	);
});

describe('a change of layout that is killed', () => {
	const newest = LEDGER_MIGRATIONS[LEDGER_MIGRATIONS.length - 1].number;
	const layoutOf = (file: string) => {
		const database = new Database(file, { readonly: true });
		try {
			expect(database.pragma('integrity_check', { simple: true })).toBe('ok');
			expect(database.prepare('SELECT name FROM person').pluck().all()).toEqual(['Somebody']);
			return database.pragma('user_version', { simple: true });
		} finally {
			database.close();
		}
	};

	it.each([
		['migration-backed-up', 8],
		['migration-step', 8],
		['migration-done', newest]
	])(
		'at "%s" is of layout %i then, and of the newest after the next start; the copy is kept',
		async (stage, then) => {
			const folder = copyOf(first);
			for (const ending of ['', '-wal', '-shm'])
				rmSync(join(folder, `ledger.sqlite${ending}`), { force: true });
			const file = join(folder, 'ledger.sqlite');
			migrate(file, LEDGER_MIGRATIONS.slice(0, 8));
			const old = new Database(file);
			old.exec("INSERT INTO person (name, code, role, created_ms) VALUES ('Somebody', 'P1', 'owner', 0)");
			old.close();
			await killed('export', [join(home, `never-${folders}.zip`), '--data', folder], stage);
			expect(layoutOf(file)).toBe(then);
			await succeeds('export', [join(home, `archive-${folders++}.zip`), '--data', folder]);
			expect(layoutOf(file)).toBe(newest);
			const copies = readdirSync(join(folder, 'backups'));
			expect(copies.length).toBeGreaterThan(0);
			for (const copy of copies) expect(layoutOf(join(folder, 'backups', copy))).toBe(8);
		}
	);
});

describe('an erasure that is killed', () => {
	const traces = (folder: string) => {
		const channels = new Database(join(folder, 'channels.sqlite'), { readonly: true });
		try {
			return channels.prepare<[], number>('SELECT count(*) FROM channel').pluck().get()!;
		} finally {
			channels.close();
		}
	};

	it.each(['erasure-written', 'erasure-file-gone', 'erasure-done'])(
		'at "%s" is brought to its end by the next start of the server',
		async (stage) => {
			const folder = copyOf(first);
			const hashes = storedSources(folder);
			await killed('erase', ['P1', '--reason', 'asked for', '--yes', '--keep-name', '--data', folder], stage);
			const left = storedSources(folder);
			expect(left).toHaveLength({ 'erasure-written': 2, 'erasure-file-gone': 1 }[stage] ?? 0);
			const report = await verify(folder);
			expect(damagesOf(report)).toEqual(left.map((sha256) => `files: ${sha256}`));
			const server = start(build, 'serve', ['--data', folder, '--port', '0']);
			await until('the files and traces to go', () => storedSources(folder).length + traces(folder) === 0);
			server.child.kill('SIGTERM');
			await server.ended;
			const after = await verify(folder);
			expect(damagesOf(after)).toEqual([]);
			expect(rides(folder).length).toBe(2);
			expect(traces(folder)).toBe(0);
			expect(hashes).toHaveLength(2);
			expect(existsSync(join(folder, 'ledger.sqlite'))).toBe(true);
		}
	);
});
