import Database from 'better-sqlite3';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { chooseName, uploadFile } from '../bench/serverClient';
import { builtProgram, freePort, smallRides, start, storedSources, until, type Running } from './program';

/** Many files are sent at once over http while the server is killed again and again. */
const FILES = 12;
/** so few that some files are always left when the server is killed: each has one request on its way */
const SENDERS = 3;

let build: string;
let files: { name: string; bytes: Buffer; sha256: string }[];
let folder: string;
let server: Running;

beforeAll(async () => {
	build = await builtProgram();
	files = smallRides(FILES).map((path) => {
		const bytes = readFileSync(path);
		return { name: basename(path), bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
	});
});
beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), 'slip-ledger-bulk-killed-'));
});
afterEach(async () => {
	server.child.kill('SIGKILL');
	await server.ended;
	rmSync(folder, { recursive: true, force: true });
});

async function serve(): Promise<string> {
	const port = await freePort();
	server = start(build, 'serve', ['--port', String(port), '--data', folder]);
	await until('the server', () => server.output().includes('is open at'), 90_000);
	return `http://127.0.0.1:${port}`;
}

/** Sends what is left, several files at once; gives back, as they come, which of them the server said it has. */
async function sendAll(origin: string, left: typeof files, taken: (sha256: string) => void): Promise<void> {
	const cookie = await chooseName(origin, 'Tester');
	const queue = [...left];
	const sender = async () => {
		for (let file = queue.shift(); file; file = queue.shift()) {
			await uploadFile(origin, cookie, file.name, file.bytes);
			taken(file.sha256);
		}
	};
	await Promise.all(Array.from({ length: SENDERS }, sender));
}

function rows<Row>(sql: string): Row[] {
	const database = new Database(join(folder, 'ledger.sqlite'), { readonly: true });
	try {
		return database.prepare<[], Row>(sql).all();
	} finally {
		database.close();
	}
}
const recorded = () =>
	rows<{ sha256: string }>('SELECT DISTINCT sha256 FROM import WHERE sha256 IS NOT NULL').map(
		({ sha256 }) => sha256
	);

it('a server that is killed while many files are sent has each that it said it has, and all of them once when they are sent again', async () => {
	const said = new Set<string>();
	for (const killAfter of [1, 4, 8]) {
		const origin = await serve();
		// what was said to be there is not sent again, as a browser does
		const left = files.filter(({ sha256 }) => !said.has(sha256));
		const sending = sendAll(origin, left, (sha256) => {
			said.add(sha256);
			// in the midst of the others
			if (said.size >= killAfter) server.child.kill('SIGKILL');
		});
		await expect(sending).rejects.toThrow();
		expect((await server.ended).signal).toBe('SIGKILL');
		expect(said.size).toBeGreaterThanOrEqual(killAfter);
		expect(recorded()).toEqual(expect.arrayContaining([...said]));
		expect(storedSources(folder)).toEqual(expect.arrayContaining([...said]));
	}
	expect(said.size).toBeLessThan(FILES);
	const origin = await serve();
	// also those that it has: somebody drops the whole folder again, from a browser that cannot ask
	await sendAll(origin, files, () => {});
	// what was read when the server was killed three times is kept and can be tried again
	const writable = new Database(join(folder, 'ledger.sqlite'), { timeout: 30_000 });
	await until(
		'every ride',
		() => {
			writable.exec("UPDATE import SET stage = 'waiting', attempts = 0 WHERE stage = 'failed'");
			return rows('SELECT 1 FROM ride').length === FILES;
		},
		90_000
	);
	writable.close();
	const hashes = files.map(({ sha256 }) => sha256).sort();
	expect(rows('SELECT sha256 FROM ride ORDER BY sha256')).toEqual(hashes.map((sha256) => ({ sha256 })));
	expect(storedSources(folder)).toEqual(hashes);
	expect(rows("SELECT sha256 FROM import WHERE stage = 'done' ORDER BY sha256")).toEqual(
		hashes.map((sha256) => ({ sha256 }))
	);
	const verified = await start(build, 'verify', ['--data', folder, '--sample', '1']).ended;
	expect(verified).toMatchObject({ code: 0, output: expect.stringContaining('All is whole') });
}, 600_000);
