// How pages answer when the ledger is full: npm run bench:many
// 10,000 rides and 20,000 events are written straight into a ledger; a real server of the build answers.
import Database from 'better-sqlite3';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { randomNumbers } from '../../src/lib/reliability/randomNumbers';
import { ANALYSIS_VERSION } from '../../src/lib/slip/analysisVersion';
import { CRITERIA } from '../release/testWords';
import { startServer } from '../faults/runCommand';
import { chooseName } from './serverClient';

/** --fill FILE RIDES writes as many as are asked for */
const RIDES = process.argv[2] === '--fill' ? Number(process.argv[4] ?? 10_000) : 10_000;
const EVENTS_PER_RIDE = 2;
const STRETCHES_PER_RIDE = 40;
const WHEELS = 20;
const PAGES = [
	'/',
	'/compare',
	'/compare?unit=episodes',
	'/compare?age=service',
	'/builds/1',
	'/builds/2/release',
	'/rides?build=1'
];
const REPEATS = 15;

// another bench wants only the ledger: tests/bench/bulk.ts
if (process.argv[2] === '--fill') {
	fill(process.argv[3]);
	process.exit(0);
}

const folder = mkdtempSync(join(tmpdir(), 'many-rides-'));
try {
	await (await startServer(folder)).stop();
	const began = performance.now();
	fill(join(folder, 'ledger.sqlite'));
	console.log(
		`${RIDES} rides, ${RIDES * EVENTS_PER_RIDE} events, ${RIDES * STRETCHES_PER_RIDE} observed stretches, written in ${seconds(began)} s`
	);
	const release = holdRunner(join(folder, 'ledger.sqlite'));
	const server = await startServer(folder);
	const cookie = await chooseName(server.origin, 'Bench');
	console.log('page | first answer, ms | computed in, ms | later: middle, slowest of fifteen, ms');
	for (const page of PAGES) {
		const first = await answerMs(server.origin + page, cookie);
		// a page that says what it computes is asked again, as a browser does by itself
		const now = `${page}${page.includes('?') ? '&' : '?'}now=1`;
		const computed = first.saysWhat ? (await answerMs(server.origin + now, cookie)).ms.toFixed(0) : '-';
		const later: number[] = [];
		for (let repeat = 0; repeat < REPEATS; repeat++)
			later.push((await answerMs(server.origin + page, cookie)).ms);
		later.sort((a, b) => a - b);
		console.log(
			`${page} | ${first.ms.toFixed(0)} | ${computed} | ${later[REPEATS >> 1].toFixed(0)}, ${later[REPEATS - 1].toFixed(0)}`
		);
	}
	await server.stop();
	release();
} finally {
	rmSync(folder, { recursive: true, force: true });
}

/** The rides have no files: a runner that looked for them would change the evidence under the pages' feet. */
function holdRunner(file: string): () => void {
	const database = new Database(file);
	const hold = database.prepare(
		`INSERT OR REPLACE INTO lease VALUES ('runner', 'bench', 'another machine', 1, 'bench', ?)`
	);
	hold.run(Date.now());
	const beat = setInterval(() => hold.run(Date.now()), 2_000);
	return () => {
		clearInterval(beat);
		database.close();
	};
}

async function answerMs(url: string, cookie: string): Promise<{ ms: number; saysWhat: boolean }> {
	const began = performance.now();
	const answer = await fetch(url, { headers: { cookie } });
	const text = await answer.text();
	if (answer.status !== 200) throw new Error(`${url} answered ${answer.status}`);
	return { ms: performance.now() - began, saysWhat: text.includes('is being computed') };
}

function seconds(began: number): string {
	return ((performance.now() - began) / 1000).toFixed(1);
}

/** Two builds on twenty wheels, the second fitted half-way; the first slips five times as often. */
function fill(file: string): void {
	const database = new Database(file);
	const draw = randomNumbers(11);
	const run = (sql: string) => database.prepare(sql);
	const startMs = Date.UTC(2020, 0, 1);
	const stepMs = 3_600_000 * 4;
	database.transaction(() => {
		run(`INSERT INTO setting VALUES ('started', 'empty') ON CONFLICT DO NOTHING`).run();
		run(
			`INSERT INTO setting VALUES ('analysisVersion', '${currentVersion(database)}') ON CONFLICT DO NOTHING`
		).run();
		const person = run(
			`INSERT INTO person (name, code, role, created_ms) VALUES (?, ?, 'rider', 0) RETURNING id`
		);
		const riders = [1, 2, 3, 4, 5].map((n) => (person.get(`Rider ${n}`, `X${n}`) as { id: number }).id);
		for (const name of ['Old', 'New'])
			run(`INSERT INTO build (name, description, state, created_ms) VALUES (?, '', 'in test', 0)`).run(name);
		for (let wheel = 1; wheel <= WHEELS; wheel++) {
			run(`INSERT INTO wheel (name, hub, created_ms) VALUES (?, '', 0)`).run(`Wheel ${wheel}`);
			const halfMs = startMs + (RIDES / 2) * stepMs;
			const fit = run(
				'INSERT INTO fitted_period (wheel_id, build_id, from_ms, until_ms, created_ms) VALUES (?, ?, ?, ?, 0)'
			);
			fit.run(wheel, 1, startMs - 1, halfMs);
			fit.run(wheel, 2, halfMs, null);
		}
		run(
			`INSERT INTO release_criteria (build_id, version, reference_build_id, criteria, reason, set_by, set_ms)
			VALUES (2, 1, 1, ?, 'bench', ?, 0)`
		).run(JSON.stringify(CRITERIA), riders[0]);
		const version = currentVersion(database);
		const source = run(`INSERT INTO source VALUES (?, 1, 'a.fit', ?, ?)`);
		const ride = run(
			`INSERT INTO ride (id, sha256, file_name, format, started_ms, duration_s, wet, wheel_id, rider_id, created_ms)
			VALUES (?, ?, 'a.fit', 'fit', ?, 7200, ?, ?, ?, ?)`
		);
		const result = run(
			'INSERT INTO result (ride_id, version, total_m, observed_m, driven_m, computed_ms) VALUES (?, ?, 50000, 33000, 40000, 0)'
		);
		const detail = run(`INSERT INTO result_detail VALUES (?, ?, '{}')`);
		const stretch = run('INSERT INTO observed_stretch VALUES (?, ?, ?, ?, ?, ?)');
		const cell = run(
			`INSERT INTO exposure_cell VALUES (?, ?, ?, ?, ?, '40/21', 1.9, 5000, 600, 4125, 500, 900, 800, 3, 2)`
		);
		const hour = run(
			'INSERT INTO exposure_hour VALUES (?, ?, ?, 20000, 3000, 16500, 2500, 4000, 3500, 9, 6)'
		);
		const event = run(
			`INSERT INTO slip_event (ride_id, version, start_s, end_s, at_m, kind, overrun_crank_deg,
				overrun_crank_lower_deg, overrun_crank_upper_deg, overrun_hub_deg, gear, hub_torque_nm, strength,
				observed, reasons)
			VALUES (?, ?, ?, ?, ?, 'slip', ?, 60, 200, 200, '40/21', ?, 0.9, 1, '[]')`
		);
		const edges = [0, 4, 8, 12, 16, 20, 25, 30, 40];
		for (let id = 1; id <= RIDES; id++) {
			const sha = id.toString(16).padStart(64, '0');
			const startedMs = startMs + id * stepMs;
			// handed in on the next day: a file older than its ride would have a clock that looks wrong
			const takenMs = startedMs + 24 * 3_600_000;
			source.run(sha, takenMs, riders[0]);
			const isOld = id <= RIDES / 2;
			ride.run(
				id,
				sha,
				startedMs,
				draw.below(2),
				1 + (id % WHEELS),
				riders[draw.below(riders.length)],
				takenMs
			);
			result.run(id, version);
			detail.run(id, version);
			for (let s = 0; s < STRETCHES_PER_RIDE; s++)
				stretch.run(id, version, s * 180, s * 180 + 118, s * 1250, s * 1250 + 825);
			edges.slice(0, 8).forEach((from, c) => cell.run(id, version, c, from, edges[c + 1]));
			hour.run(id, version, 0);
			hour.run(id, version, 1);
			for (let e = 0; e < EVENTS_PER_RIDE; e++) {
				const s = draw.below(STRETCHES_PER_RIDE);
				const counts = draw.next() < (isOld ? 0.1 : 0.02);
				const startS = s * 180 + 20 + e;
				event.run(
					id,
					version,
					startS,
					startS + 1,
					s * 1250 + 140,
					counts ? 120 : 60,
					edges[draw.below(8)] + 1
				);
			}
		}
	})();
	database.close();
}

function currentVersion(database: Database.Database): number {
	const row = database.prepare(`SELECT value FROM setting WHERE name = 'analysisVersion'`).get() as
		{ value: string } | undefined;
	return Number(row?.value ?? ANALYSIS_VERSION);
}
