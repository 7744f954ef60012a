import Database from 'better-sqlite3';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { actorOf, choosePerson, openLedger, recordVerdict, type Ledger } from '$lib/server';
import { chooseName, uploadFile, waitForImport } from '../bench/serverClient';
import { smallRides } from './program';
import { project, startServer } from './runCommand';

const RIDES = 450;

let folder: string;
let server: Awaited<ReturnType<typeof startServer>>;
let cookie: string;
let ledger: Ledger;

/** A server whose ledger has so many rides that figures are computed beside it. */
beforeAll(async () => {
	folder = mkdtempSync(join(tmpdir(), 'slip-ledger-figures-'));
	await (await startServer(folder)).stop();
	const fill = ['tsx', 'tests/bench/manyRides.ts', '--fill', join(folder, 'ledger.sqlite'), String(RIDES)];
	const filled = spawnSync('npx', fill, { cwd: project });
	expect(filled.status, String(filled.stderr)).toBe(0);
	leaveNothingToDo();
	server = await startServer(folder);
	cookie = await chooseName(server.origin, 'Owner');
	ledger = openLedger(folder, { migrate: false });
}, 300_000);

afterAll(async () => {
	ledger?.close();
	await server?.stop();
	rmSync(folder, { recursive: true, force: true });
});

/** The rides have no files: a runner would try to read them. */
function leaveNothingToDo(): void {
	const database = new Database(join(folder, 'ledger.sqlite'));
	database.prepare('ATTACH ? AS channels').run(join(folder, 'channels.sqlite'));
	database.exec(`
		INSERT INTO insertion_attempt (ride_id, version, attempts, failure)
			SELECT ride_id, version, 1, 'made for a test' FROM result;
		INSERT INTO channels.channel (sha256, version, name, length, step) SELECT r.sha256, s.version, 'speedMps', 0, 1
			FROM ride r JOIN result s ON s.ride_id = r.id;
	`);
	database.close();
}

async function page(path: string): Promise<string> {
	const answer = await fetch(server.origin + path, { headers: { cookie } });
	expect(answer.status).toBe(200);
	return (await answer.text()).replace(/<!--.*?-->/g, '').replace(/\s+/g, ' ');
}

/** number of the process that computes figures; null = none runs */
function readerPid(): number | null {
	const ofServer = readdirSync('/proc').filter((name) => {
		if (!/^\d+$/.test(name)) return false;
		try {
			const command = readFileSync(`/proc/${name}/cmdline`, 'latin1');
			return command.includes('readers/figures.js') && command.includes(folder);
		} catch {
			return false;
		}
	});
	return ofServer.length > 0 ? Number(ofServer[0]) : null;
}

const COMPUTING = 'is being computed';
const OLDER = 'was read since and is being counted';

describe('figures of many rides', () => {
	it.each([
		['/', 'The programme', 'per 100'],
		['/builds/1', 'How Old was ridden', 'per 100'],
		['/compare', 'How the builds stand against each other', 'per 100'],
		['/builds/2/release', 'How this build stands against its criteria', 'criteria']
	])('are announced at %s before they are computed, then shown', async (path, what, shown) => {
		const first = await page(path);
		expect(first).toContain(`${what} ${COMPUTING}`);
		expect(first).toContain(`${RIDES} rides are in the ledger`);
		const computed = await page(`${path}?now=1`);
		expect(computed).not.toContain(COMPUTING);
		expect(computed).toContain(shown);
		expect(await page(path)).not.toContain(COMPUTING);
		expect(readerPid()).not.toBeNull();
	});

	it('miss a ride that came in and say so, but never where a release is signed', async () => {
		const [file] = smallRides(1);
		const importId = await uploadFile(server.origin, cookie, 'ride.fit', readFileSync(file));
		expect(await waitForImport(server.origin, cookie, importId)).toBe('done');
		for (const path of ['/', '/builds/1', '/compare']) {
			const older = await page(path);
			expect(older).toContain(OLDER);
			expect(older).not.toContain(COMPUTING);
		}
		const release = await page('/builds/2/release');
		expect(release).not.toContain(OLDER);
		expect(release).toContain(COMPUTING);
		expect(await page('/builds/2/release?now=1')).not.toContain(OLDER);
	});

	it('hold a verdict at once, whatever was computed before', async () => {
		await page('/?now=1');
		const event = ledger.database
			.prepare<[], { id: number }>(
				"SELECT id FROM slip_event WHERE overrun_crank_deg >= 90 AND kind = 'slip' AND verdict_id IS NULL LIMIT 1"
			)
			.get()!;
		const unreviewed = /<strong>(\d+)<\/strong> events that count need a review/;
		const before = Number(unreviewed.exec(await page('/'))![1]);
		const actor = actorOf(choosePerson(ledger, 'Owner'));
		recordVerdict(ledger, actor, event.id, { verdict: 'rejected', reason: 'shift' });
		expect(await page('/')).toContain(COMPUTING);
		expect(Number(unreviewed.exec(await page('/?now=1'))![1])).toBe(before - 1);
	});

	it('are computed by a fresh process when the first one was ended', async () => {
		const before = readerPid()!;
		process.kill(before, 'SIGKILL');
		expect(await page('/compare?unit=episodes&now=1')).toContain('per 100');
		await expect.poll(readerPid, { timeout: 20_000 }).not.toBe(before);
		expect(readerPid()).not.toBeNull();
	});

	it('leave no process behind when the server stops', async () => {
		expect(readerPid()).not.toBeNull();
		ledger.close();
		expect(await server.stop()).toBe(0);
		await expect.poll(readerPid, { timeout: 20_000 }).toBeNull();
	});
});
