import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { actorOf, choosePerson, openLedger, storeFile } from '$lib/server';
import { createReadStream } from 'node:fs';
import { builtProgram, smallRides, start, until } from './program';

let build: string;
let folder: string;
beforeAll(async () => (build = await builtProgram()));
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'slip-ledger-power-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function count(sql: string): number {
	const ledger = openLedger(folder, { migrate: false });
	try {
		return ledger.database.prepare<[], number>(sql).pluck().get()!;
	} finally {
		ledger.close();
	}
}

it('a power cut while the server reads files (the whole process group killed, several times) loses no ride', async () => {
	const files = smallRides(4);
	const ledger = openLedger(folder, { migrate: true });
	const actor = actorOf(choosePerson(ledger, 'Tester'));
	for (const file of files)
		await storeFile(ledger, actor, { name: 'ride.fit', bytes: createReadStream(file) });
	ledger.close();
	// two cuts: a file that is under way at the third is given up, kept, and can be tried again
	for (const afterMs of [150, 500]) {
		const server = spawn(
			process.execPath,
			[join(build, 'entries', 'cli', 'serve.js'), '--port', '0', '--data', folder],
			{ detached: true, stdio: 'ignore' }
		);
		const ended = new Promise((resolve) => server.once('exit', resolve));
		await until('a file to be under way or done', () =>
			count("SELECT count(*) FROM import WHERE stage IN ('analysing', 'done')")
		);
		await new Promise((resolve) => setTimeout(resolve, afterMs));
		process.kill(-server.pid!, 'SIGKILL');
		await ended;
	}
	const server = start(build, 'serve', ['--port', '0', '--data', folder]);
	await until('every ride to appear', () => count('SELECT count(*) FROM ride') === files.length, 60_000);
	server.child.kill('SIGTERM');
	expect(await server.ended).toMatchObject({ code: 0 });
	expect(count("SELECT count(*) FROM import WHERE stage = 'done'")).toBe(files.length);
	const verified = await start(build, 'verify', ['--data', folder, '--sample', '4']).ended;
	expect(verified.output).toContain('All is whole');
	expect(verified.code).toBe(0);
});
