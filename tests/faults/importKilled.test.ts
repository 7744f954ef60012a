import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { ImportRunner, openLedger, type Ledger } from '$lib/server';
import { builtProgram, smallRides, start, storedSources, until } from './program';

let build: string;
let files: string[];
let hashes: string[];
/** what two undisturbed rides look like in the ledger */
let undisturbed: unknown;
const folders: string[] = [];
const ledgers: Ledger[] = [];

beforeAll(async () => {
	build = await builtProgram();
	process.env.SLIP_LEDGER_ANALYSE_FILE = join(build, 'entries', 'jobs', 'analyseFile.js');
	files = smallRides(2);
	hashes = files.map((file) => createHash('sha256').update(readFileSync(file)).digest('hex')).sort();
	const folder = freshFolder();
	const { code, output } = await start(build, 'import', ['--data', folder, ...files]).ended;
	if (code !== 0) throw new Error(output);
	undisturbed = contents(open(folder));
});

afterEach(() => {
	for (const ledger of ledgers.splice(0)) ledger.close();
	for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

function freshFolder(): string {
	const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-fault-'));
	folders.push(folder);
	return folder;
}

function open(folder: string): Ledger {
	const ledger = openLedger(folder, { migrate: true });
	ledgers.push(ledger);
	return ledger;
}

/** Everything that a person could see or count, without ids and instants of writing. */
function contents(ledger: Ledger) {
	const all = (sql: string) => ledger.database.prepare(sql).all();
	return {
		rides: all('SELECT sha256, started_ms, duration_s FROM ride ORDER BY sha256'),
		results: all(
			`SELECT r.sha256, s.version, s.total_m, s.observed_m FROM result s JOIN ride r ON r.id = s.ride_id
			ORDER BY r.sha256`
		),
		events: all(
			`SELECT r.sha256, e.start_s, e.overrun_crank_deg FROM slip_event e JOIN ride r ON r.id = e.ride_id
			ORDER BY r.sha256, e.start_s`
		),
		stretches: all('SELECT count(*) AS n, sum(end_m - start_m) AS m FROM observed_stretch'),
		sources: all('SELECT sha256, bytes FROM source ORDER BY sha256'),
		channels: ledger.channels
			.prepare(
				`SELECT sha256, name, level, side, chunk, length(packed) AS bytes FROM channel_chunk
				ORDER BY sha256, name, level, side, chunk`
			)
			.all(),
		unfinished: all("SELECT 1 FROM import WHERE stage NOT IN ('done', 'already in the ledger')")
	};
}

const STAGES = ['source-stored', 'source-moved', 'leased', 'analysed', 'channels-written', 'done'];
/** stages at which the ledger already knows the file */
const RECORDED = ['leased', 'analysed', 'channels-written', 'done'];

describe('an import that is killed', () => {
	it('has something to compare with', () => {
		expect(undisturbed).toMatchObject({ rides: [{}, {}], results: [{}, {}], unfinished: [] });
		expect((undisturbed as { events: unknown[] }).events.length).toBeGreaterThan(0);
	});

	it.each(STAGES)('at "%s" ends in the same ledger when it is started again', async (stage) => {
		const folder = freshFolder();
		const args = ['--data', folder, ...files];
		const killed = await start(build, 'import', args, { SLIP_LEDGER_FAULT: stage }).ended;
		expect(killed.signal).toBe('SIGKILL');
		const again = await start(build, 'import', args).ended;
		expect(again.output).not.toContain('refused');
		expect(again.code).toBe(0);
		expect(contents(open(folder))).toEqual(undisturbed);
		expect(storedSources(folder)).toEqual(hashes);
	});

	it.each(RECORDED)(
		'at "%s" is gone on with by whoever analyses next, without the file being handed in again',
		async (stage) => {
			const folder = freshFolder();
			const args = ['--data', folder, files[0]];
			const killed = await start(build, 'import', args, { SLIP_LEDGER_FAULT: stage }).ended;
			expect(killed.signal).toBe('SIGKILL');
			const ledger = open(folder);
			const runner = new ImportRunner(ledger, { lookEveryMs: 50 });
			runner.start();
			await until('the import to be done', () =>
				ledger.database.prepare("SELECT 1 FROM import WHERE stage = 'done'").get()
			);
			await runner.stop();
			expect(contents(ledger).rides).toHaveLength(1);
			expect(contents(ledger).results).toHaveLength(1);
			expect(contents(ledger).unfinished).toEqual([]);
		}
	);

	it('again and again at every stage in turn still ends in the same ledger', async () => {
		const folder = freshFolder();
		const args = ['--data', folder, ...files];
		for (const stage of STAGES) await start(build, 'import', args, { SLIP_LEDGER_FAULT: stage }).ended;
		const last = await start(build, 'import', args).ended;
		expect(last.code).toBe(0);
		expect(contents(open(folder))).toEqual(undisturbed);
	});

	it('at any moment (20 kills after 30 to 600 ms) loses nothing and doubles nothing', async () => {
		const folder = freshFolder();
		const args = ['--data', folder, ...files];
		for (let kill = 1; kill <= 20; kill++) {
			const running = start(build, 'import', args);
			const timer = setTimeout(() => running.child.kill('SIGKILL'), 30 * kill);
			await running.ended;
			clearTimeout(timer);
		}
		const ledger = open(folder);
		// three kills while a file is being read make it "failed", now or at the next look: it is kept and can be tried again
		ledger.database.exec(
			"UPDATE import SET stage = 'waiting', attempts = 0, owner = NULL WHERE stage IN ('failed', 'analysing')"
		);
		const last = await start(build, 'import', args).ended;
		expect(last.code).toBe(0);
		expect(contents(ledger)).toEqual(undisturbed);
		expect(storedSources(folder)).toEqual(hashes);
	});
});
