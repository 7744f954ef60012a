import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { openLedger, type Ledger } from '$lib/server';
import { builtProgram, smallRides, start, storedSources, until, type Running } from './program';

let build: string;
const running: Running[] = [];
const folders: string[] = [];

beforeAll(async () => {
	build = await builtProgram();
});

afterEach(() => {
	for (const { child } of running.splice(0)) child.kill('SIGKILL');
	for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

function freshFolder(): string {
	const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-fault-'));
	folders.push(folder);
	return folder;
}

function startImport(folder: string, files: readonly string[], env: Record<string, string> = {}): Running {
	const process = start(build, 'import', ['--data', folder, ...files], env);
	running.push(process);
	return process;
}

function countOf(ledger: Ledger, sql: string): number {
	return (ledger.database.prepare(sql).get() as { n: number }).n;
}

describe('processes that share a ledger', () => {
	it('put every file in once, also the one that all of them bring', async () => {
		const folder = freshFolder();
		const [shared, ...own] = smallRides(4);
		const ended = await Promise.all(own.map((file) => startImport(folder, [shared, file]).ended));
		expect(ended.map(({ code }) => code)).toEqual([0, 0, 0]);
		expect(ended.map(({ output }) => output.trim().split('\n').length)).toEqual([2, 2, 2]);
		const ledger = openLedger(folder, { migrate: false });
		expect(countOf(ledger, 'SELECT count(*) AS n FROM ride')).toBe(4);
		expect(countOf(ledger, 'SELECT count(*) AS n FROM result')).toBe(4);
		expect(countOf(ledger, "SELECT count(*) AS n FROM import WHERE stage = 'done'")).toBe(4);
		expect(countOf(ledger, "SELECT count(*) AS n FROM import WHERE stage = 'already in the ledger'")).toBe(2);
		expect(countOf(ledger, 'SELECT count(*) AS n FROM lease')).toBe(0);
		expect(storedSources(folder)).toHaveLength(4);
		ledger.close();
	});

	it('go on with what one of them leaves behind when it is killed', async () => {
		const folder = freshFolder();
		const files = smallRides(3);
		openLedger(folder, { migrate: true }).close();
		const killed = startImport(folder, files.slice(0, 2), { SLIP_LEDGER_FAULT: 'channels-written' });
		await until('the lease to be taken', () => leaseHolder(folder));
		const other = startImport(folder, files.slice(2));
		expect((await killed.ended).signal).toBe('SIGKILL');
		expect((await other.ended).code).toBe(0);
		// the files of the killed one that were recorded are read by whoever comes next
		await startImport(folder, files).ended;
		const ledger = openLedger(folder, { migrate: false });
		expect(countOf(ledger, 'SELECT count(*) AS n FROM ride')).toBe(3);
		expect(countOf(ledger, "SELECT count(*) AS n FROM import WHERE stage IN ('waiting', 'analysing')")).toBe(
			0
		);
		ledger.close();
	});

	it('take a lease over from one that hangs, and let it change nothing when it wakes up', async () => {
		const folder = freshFolder();
		const [good] = smallRides(1);
		const endless = join(folder, 'endless.fit');
		writeFileSync(endless, 'TIME\n');
		const hanging = startImport(folder, [endless], { SLIP_LEDGER_TROUBLE: '1' });
		const ledger = await until('the ledger', () => tryOpen(folder));
		await until('the file to be analysed', () =>
			countOf(ledger, "SELECT count(*) AS n FROM import WHERE stage = 'analysing'")
		);
		hanging.child.kill('SIGSTOP');
		const other = startImport(folder, [good]);
		await until('the other file to wait', () =>
			countOf(ledger, "SELECT count(*) AS n FROM import WHERE stage = 'waiting'")
		);
		expect(countOf(ledger, 'SELECT count(*) AS n FROM ride')).toBe(0);
		// as if it had hung for a minute
		ledger.database.prepare('UPDATE lease SET heartbeat_ms = heartbeat_ms - 60000').run();
		expect((await other.ended).code).toBe(0);
		const stages = () =>
			ledger.database.prepare('SELECT file_name AS file, stage, attempts FROM import ORDER BY id').all();
		const after = stages();
		expect(after).toMatchObject([{ stage: 'refused', attempts: 2 }, { stage: 'done' }]);
		hanging.child.kill('SIGCONT');
		const woken = await hanging.ended;
		expect(woken.code).toBe(1);
		expect(woken.output).toContain('refused');
		expect(stages()).toEqual(after);
		expect(countOf(ledger, 'SELECT count(*) AS n FROM ride')).toBe(1);
		ledger.close();
	});
});

describe('a process that is killed', () => {
	it('takes the child that analyses with it, even out of a file that never ends', async () => {
		const folder = freshFolder();
		const endless = join(folder, 'endless.fit');
		writeFileSync(endless, 'TIME\n');
		const importing = startImport(folder, [endless], { SLIP_LEDGER_TROUBLE: '1' });
		const child = await until('the child', () => childOf(importing.child.pid!));
		await until('the file to be analysed', () => {
			const ledger = tryOpen(folder);
			const n = ledger ? countOf(ledger, "SELECT count(*) AS n FROM import WHERE stage = 'analysing'") : 0;
			ledger?.close();
			return n;
		});
		// long enough to be inside the endless loop
		await new Promise((resolve) => setTimeout(resolve, 500));
		expect(isRunning(child)).toBe(true);
		importing.child.kill('SIGKILL');
		await importing.ended;
		await until('the child to be gone', () => !isRunning(child), 5000);
	});
});

interface Process {
	pid: number;
	parent: number;
	state: string;
}

/** every process of this machine, also those that have ended but were not waited for (state Z) */
function processes(): Process[] {
	const listed = existsSync('/proc/self/stat')
		? readdirSync('/proc')
				.filter((name) => /^\d+$/.test(name))
				.flatMap(fromProc)
		: spawnSync('ps', ['-axo', 'pid=,ppid=,stat='], { encoding: 'utf8' }).stdout.trim().split('\n');
	return listed.map((line) => {
		const [pid, parent, state] = line.trim().split(/\s+/);
		return { pid: Number(pid), parent: Number(parent), state };
	});
}

function fromProc(pid: string): string[] {
	try {
		const stat = readFileSync(`/proc/${pid}/stat`, 'latin1');
		const [state, parent] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
		return [`${pid} ${parent} ${state}`];
	} catch {
		return [];
	}
}

/** the first child process of a process; null while it has none */
function childOf(parent: number): number | null {
	return processes().find((other) => other.parent === parent)?.pid ?? null;
}

function isRunning(pid: number): boolean {
	return processes().some((other) => other.pid === pid && !other.state.startsWith('Z'));
}

function tryOpen(folder: string): Ledger | null {
	try {
		return openLedger(folder, { migrate: false });
	} catch {
		return null;
	}
}

function leaseHolder(folder: string): unknown {
	const ledger = tryOpen(folder);
	const held = ledger?.database.prepare('SELECT owner FROM lease').get();
	ledger?.close();
	return held;
}
