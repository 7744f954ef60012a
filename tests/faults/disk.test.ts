import Database from 'better-sqlite3';
import { cpSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { migrate } from '$lib/server/ledger/migrate';
import { LEDGER_MIGRATIONS } from '$lib/server/ledger/migrations';
import { builtProgram, smallRides, start, storedSources, until } from './program';
import { MAY_MOUNT, smallDisk, type SmallDisk } from './smallDisk';

let build: string;
let home: string;
/** a ledger with two rides and a backup of it, on the ordinary disk */
let first: string;
let backups: string;
let disk: SmallDisk;
const disks: SmallDisk[] = [];

beforeAll(async () => {
	build = await builtProgram();
	home = mkdtempSync(join(tmpdir(), 'slip-ledger-full-'));
	first = join(home, 'first');
	backups = join(home, 'backups');
	await succeeds('import', ['--data', first, ...smallRides(2)]);
	await succeeds('backup', ['--data', first, backups]);
});
afterEach(() => disks.splice(0).forEach((one) => one.remove()));
afterAll(() => rmSync(home, { recursive: true, force: true }));

function newDisk(megabytes: number): void {
	disk = smallDisk(megabytes)!;
	disks.push(disk);
}

async function succeeds(command: string, args: string[]): Promise<string> {
	const { code, output } = await start(build, command, args).ended;
	expect({ command, code, output }).toMatchObject({ command, code: 0 });
	return output;
}

/** ends with code 1 and a sentence, not with inner workings */
async function refuses(command: string, args: string[], sentence: RegExp): Promise<void> {
	const { code, output } = await start(build, command, args).ended;
	expect(output).toMatch(sentence);
	expect(output).not.toMatch(/\bat \S+ \(|node:internal/);
	expect(code).toBe(1);
}

const rides = (folder: string) => {
	const database = new Database(join(folder, 'ledger.sqlite'));
	try {
		return database.prepare<[], number>('SELECT count(*) FROM ride').pluck().get()!;
	} finally {
		database.close();
	}
};

describe.skipIf(!MAY_MOUNT)('on a disk that is full', () => {
	it('an import says so, what was taken stays whole, and it goes on when there is room', async () => {
		newDisk(48);
		const folder = join(disk.folder, 'ledger');
		cpSync(first, folder, { recursive: true });
		disk.fillUpTo(20_000);
		const args = ['--data', folder, ...smallRides(4).slice(2)];
		await refuses('import', args, /The disk that holds the ledger is full/);
		await refuses('serve', ['--data', folder, '--port', '0'], /The disk that holds the ledger is full/);
		await succeeds('verify', ['--data', folder]);
		disk.clear();
		expect(rides(folder)).toBe(2);
		await succeeds('import', args);
		expect(rides(folder)).toBe(4);
		await succeeds('verify', ['--data', folder]);
	});

	it('a file that fits while its traces do not is kept, and read when there is room', async () => {
		newDisk(48);
		const folder = join(disk.folder, 'ledger');
		cpSync(first, folder, { recursive: true });
		const server = start(build, 'serve', ['--data', folder, '--port', '0']);
		await until('the server', () => server.output().includes('is open at'));
		// the ride's file, but not its traces and the ledger's log
		disk.fillUpTo(200_000);
		const importing = start(build, 'import', ['--data', folder, ...smallRides(3).slice(2)]);
		await Promise.race([importing.ended, new Promise((resolve) => setTimeout(resolve, 6000))]);
		importing.child.kill('SIGKILL');
		await importing.ended;
		const origin = /http:\/\/\S+/.exec(server.output())![0];
		const lives = await fetch(`${origin}/health.json`);
		expect({ status: lives.status, log: server.output() }).toMatchObject({ status: 200 });
		expect(await lives.json()).toMatchObject({ state: 'open' });
		expect((await fetch(`${origin}/ready.json`)).status).toBe(503);
		disk.clear();
		await succeeds('import', ['--data', folder, ...smallRides(3).slice(2)]);
		await until('the ride', () => rides(folder) === 3);
		server.child.kill('SIGTERM');
		expect(await server.ended).toMatchObject({ code: 0 });
		await succeeds('verify', ['--data', folder]);
	});

	it('a backup is refused before anything is written, and the earlier one stays whole', async () => {
		newDisk(40);
		const target = join(disk.folder, 'backups');
		cpSync(backups, target, { recursive: true });
		disk.fillUpTo(100_000);
		const before = readdirSync(target, { recursive: true }).sort();
		await refuses('backup', ['--data', first, target], /room for 1 MB and \d+ MB are needed/);
		expect(readdirSync(target, { recursive: true }).sort()).toEqual(before);
		await succeeds('restore', [target, '--data', join(home, 'from-full')]);
		expect(rides(join(home, 'from-full'))).toBe(2);
	});

	it('a change of layout is refused, and the ledger is as it was', async () => {
		newDisk(24);
		const folder = join(disk.folder, 'ledger');
		cpSync(first, folder, { recursive: true });
		for (const ending of ['', '-wal', '-shm'])
			rmSync(join(folder, `ledger.sqlite${ending}`), { force: true });
		const file = join(folder, 'ledger.sqlite');
		migrate(file, LEDGER_MIGRATIONS.slice(0, 9));
		const old = new Database(file);
		old.exec("INSERT INTO person (name, code, role, created_ms) VALUES ('Somebody', 'P1', 'owner', 0)");
		old.close();
		disk.fillUpTo(2_000_000);
		await refuses(
			'serve',
			['--data', folder, '--port', '0'],
			/copy of it is kept first, but the disk is too full/
		);
		const after = new Database(file);
		expect(after.pragma('user_version', { simple: true })).toBe(9);
		expect(after.pragma('integrity_check', { simple: true })).toBe('ok');
		after.close();
		expect(existsSync(join(folder, 'backups')) ? readdirSync(join(folder, 'backups')) : []).toEqual([]);
		disk.clear();
		await succeeds('export', ['--data', folder, join(home, 'after-room.zip')]);
		expect(readdirSync(join(folder, 'backups'))).toHaveLength(1);
	});

	it('a restore is refused, and the ledger stays empty', async () => {
		newDisk(16);
		await refuses('restore', [backups, '--data', join(disk.folder, 'ledger')], /too little room/);
		expect(storedSources(join(disk.folder, 'ledger'))).toEqual([]);
	});
});

describe.skipIf(!MAY_MOUNT)('in a folder that cannot be written to', () => {
	it('verify still says what is whole; start, import and backup into it are refused in a sentence', async () => {
		newDisk(48);
		const folder = join(disk.folder, 'ledger');
		cpSync(first, folder, { recursive: true });
		disk.readOnly(true);
		expect(await succeeds('verify', ['--data', folder])).toContain('All is whole');
		await refuses(
			'serve',
			['--data', folder, '--port', '0'],
			/cannot be used for the ledger|cannot be written/
		);
		await refuses(
			'import',
			['--data', folder, ...smallRides(1)],
			/cannot be used for the ledger|cannot be written/
		);
		await refuses('backup', ['--data', first, join(disk.folder, 'b')], /cannot be used for a backup/);
		disk.readOnly(false);
		await succeeds('import', ['--data', folder, ...smallRides(3).slice(2)]);
		expect(rides(folder)).toBe(3);
	});
});
