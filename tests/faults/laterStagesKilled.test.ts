import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import {
	actorOf,
	assignRide,
	choosePerson,
	createWheel,
	ImportRunner,
	openLedger,
	rideStages,
	type Ledger
} from '$lib/server';
import { MOST_ATTEMPTS } from '$lib/server/queue/importQueue';
import { builtProgram, freePort, smallRides, start, until } from './program';

let build: string;
let ride: string;
const folders: string[] = [];
const ledgers: Ledger[] = [];
const runners: ImportRunner[] = [];

beforeAll(async () => {
	build = await builtProgram();
	process.env.SLIP_LEDGER_ANALYSE_FILE = join(build, 'entries', 'jobs', 'analyseFile.js');
	[ride] = smallRides(1);
});

afterEach(async () => {
	for (const runner of runners.splice(0)) await runner.stop();
	for (const ledger of ledgers.splice(0)) ledger.close();
	for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A ledger with one ride, whose import was not disturbed; later stages may have begun or not. */
async function ledgerWithRide(): Promise<string> {
	const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-fault-'));
	folders.push(folder);
	const { code, output } = await start(build, 'import', ['--data', folder, ride]).ended;
	if (code !== 0) throw new Error(output);
	return folder;
}

function open(folder: string): Ledger {
	const ledger = openLedger(folder, { migrate: true });
	ledgers.push(ledger);
	return ledger;
}

/** Lets a server work on the ledger until the fault ends it. */
async function serveUntilKilled(folder: string, fault: string): Promise<void> {
	const port = String(await freePort());
	const args = ['--data', folder, '--port', port];
	const killed = await start(build, 'serve', args, { SLIP_LEDGER_FAULT: fault }).ended;
	expect(killed.signal).toBe('SIGKILL');
}

async function finish(ledger: Ledger): Promise<void> {
	const runner = new ImportRunner(ledger, { lookEveryMs: 50 });
	runners.push(runner);
	runner.start();
	const nothingLeft = () =>
		ledger.database
			.prepare(
				`SELECT 1 FROM insertion_test t JOIN result s ON s.ride_id = t.ride_id AND s.version = t.version
				WHERE NOT EXISTS (SELECT 1 FROM insertion_attempt)`
			)
			.get() !== undefined && rideStages(ledger, 1)?.again === null;
	await until('the later stages to be done', nothingLeft, 100_000);
	await runner.stop();
}

/** All that the later stages make, without ids and instants of writing. */
function made(ledger: Ledger) {
	const all = (sql: string) => ledger.database.prepare(sql).all();
	return {
		results: all('SELECT version, total_m, observed_m, driven_m, bike_facts FROM result'),
		events: all('SELECT version, start_s, overrun_crank_deg, gear FROM slip_event ORDER BY version, start_s'),
		stretches: all('SELECT count(*) AS n, sum(end_m - start_m) AS m FROM observed_stretch'),
		cells: all('SELECT count(*) AS n, sum(observed_m) AS m FROM exposure_cell'),
		tests: all('SELECT version, seed, passes, put, found, not_run FROM insertion_test'),
		tallies: all('SELECT * FROM insertion_tally ORDER BY tally'),
		attempts: [...all('SELECT * FROM insertion_attempt'), ...all('SELECT * FROM derivation')]
	};
}

/** The ride gets a wheel whose circumference is known: its result has to be made again. */
function describeWheel(ledger: Ledger): void {
	ledger.database.exec(
		`INSERT INTO wheel (id, name, hub, circumference_m, created_ms) VALUES (1, 'W', 'h', 2.2, 0);
		UPDATE ride SET wheel_id = 1`
	);
}

/** A result and what hangs on it always belong together, whenever one looks. */
function expectWhole(ledger: Ledger): void {
	const results = ledger.database
		.prepare(
			`SELECT s.observed_m AS observedM,
				(SELECT coalesce(sum(end_m - start_m), 0) FROM observed_stretch WHERE ride_id = s.ride_id) AS stretchesM,
				(SELECT coalesce(sum(observed_m), 0) FROM exposure_cell WHERE ride_id = s.ride_id) AS cellsM
			FROM result s`
		)
		.all() as { observedM: number; stretchesM: number; cellsM: number }[];
	expect(results).toHaveLength(1);
	for (const { observedM, stretchesM, cellsM } of results) {
		expect(stretchesM).toBeCloseTo(observedM, 3);
		expect(cellsM).toBeCloseTo(observedM, 3);
	}
}

describe('putting slips into a ride, when it is killed', () => {
	let undisturbed: ReturnType<typeof made>;
	beforeAll(async () => {
		const ledger = open(await ledgerWithRide());
		await finish(ledger);
		undisturbed = made(ledger);
	});

	it('has something to compare with', () => {
		expect(undisturbed.tests).toMatchObject([{ not_run: null }]);
		expect(undisturbed.tallies.length).toBeGreaterThan(20);
		expect(undisturbed.attempts).toEqual([]);
	});

	it.each(['inserting', 'inserted', 'insertion-done'])('at "%s" ends in the same ledger', async (stage) => {
		const folder = await ledgerWithRide();
		// what the import's own end may have begun is begun anew
		const before = open(folder);
		before.database.exec('DELETE FROM insertion_test; DELETE FROM insertion_attempt');
		before.close();
		await serveUntilKilled(folder, stage);
		const ledger = open(folder);
		expectWhole(ledger);
		await finish(ledger);
		expect(made(ledger)).toEqual(undisturbed);
	});

	it('again and again is given up, and the ride stands as it was', async () => {
		const folder = await ledgerWithRide();
		const ledger = open(folder);
		ledger.database.exec('DELETE FROM insertion_test; DELETE FROM insertion_attempt');
		for (let kill = 0; kill < MOST_ATTEMPTS; kill++) await serveUntilKilled(folder, 'inserting');
		expect(rideStages(ledger, 1)?.insertion).toEqual({
			stage: 'none',
			reason: 'it broke off again and again'
		});
		const { results, events, tests } = made(ledger);
		expect({ results, events }).toEqual({ results: undisturbed.results, events: undisturbed.events });
		expect(tests).toEqual([]);
	});
});

describe('a program that runs', () => {
	it('computes a ride again as soon as its wheel is named, and puts slips into it anew', async () => {
		const ledger = open(await ledgerWithRide());
		const runner = new ImportRunner(ledger, { lookEveryMs: 50 });
		runners.push(runner);
		runner.start();
		const factsTested = () =>
			ledger.database
				.prepare<[], { facts: string; put: number }>(
					`SELECT s.bike_facts AS facts, t.put FROM result s JOIN insertion_test t
					ON t.ride_id = s.ride_id AND t.version = s.version`
				)
				.get();
		const before = await until('slips to be put in', factsTested, 100_000);
		expect(before.facts).toBe('');
		const actor = actorOf(choosePerson(ledger, 'Ada Nowhere'));
		const wheelId = createWheel(ledger, actor, { name: 'W', hub: 'a hub', circumferenceM: 2.2 });
		assignRide(ledger, actor, 1, { wheelId });
		const after = await until(
			'slips to be put in again',
			() => {
				const now = factsTested();
				return now && now.facts !== '' ? now : null;
			},
			100_000
		);
		expect(after.put).toBeGreaterThan(20);
		expect(rideStages(ledger, 1)).toMatchObject({ again: null, insertion: { stage: 'done' } });
		expectWhole(ledger);
		await runner.stop();
	});
});

describe('computing a ride again for another bike, when it is killed', () => {
	let undisturbed: ReturnType<typeof made>;
	beforeAll(async () => {
		const ledger = open(await ledgerWithRide());
		describeWheel(ledger);
		await finish(ledger);
		undisturbed = made(ledger);
	});

	it('has something to compare with', () => {
		expect(undisturbed.results).toMatchObject([{ bike_facts: expect.stringMatching(/^[0-9a-f]{32}$/) }]);
		expect(undisturbed.events.length).toBeGreaterThan(0);
	});

	it.each(['deriving', 'derived', 'derived-channels-written', 'derivation-done'])(
		'at "%s" leaves the old result or the new one whole, and ends in the same ledger',
		async (stage) => {
			const folder = await ledgerWithRide();
			const before = open(folder);
			describeWheel(before);
			before.close();
			await serveUntilKilled(folder, stage);
			const ledger = open(folder);
			expectWhole(ledger);
			expect(rideStages(ledger, 1)?.again).toEqual(stage === 'derivation-done' ? null : { state: 'queued' });
			await finish(ledger);
			expect(made(ledger)).toEqual(undisturbed);
		}
	);
});
