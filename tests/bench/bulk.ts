// A workshop's bulk: npm run bench:bulk [-- RIDES]
// 50 riders, in a process of their own, upload 1,000 different rides of three hours to a real server of the build at
// once, into a ledger that is empty and into one with 10,000 rides; meanwhile pages are asked for, and as often a
// process that answers every request with one letter: what that waits is the machine's, not the server's. Prints rides
// a second, processor time a ride, memory, how pages and uploads answer, and what a ride takes of the channel store.
import Database from 'better-sqlite3';
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { pathToFileURL } from 'node:url';
import { randomSlippingSpec } from '../../sample-rides/generator/randomSpecs';
import { simulateRide } from '../../sample-rides/generator/simulateRide';
import { writeFit } from '../../sample-rides/generator/writeFit';
import { ANALYSIS_VERSION } from '../../src/lib/slip/analysisVersion';
import type { VerifyReport } from '../../src/lib/server/verify/verifyReport';
import { project, runCommand, startServer } from '../faults/runCommand';
import { processFigures, type ProcessFigures } from './processFigures';
import { chooseName } from './serverClient';

const RIDES = Number(process.argv[2] ?? 1000);
const RIDERS = 50;
const HOURS = 3;
/** so many are simulated; the others are the same rides on other days */
const SIMULATED = 12;
const PAGES = ['/', '/rides', '/imports.json', '/builds', '/wheels'];
const PAGE_EVERY_MS = 100;

const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-bulk-'));
try {
	const files = join(folder, 'files');
	writeRides(files);
	console.log(
		`${cpus().length} processors (${cpus()[0].model.trim()}), load ${loadavg()[0].toFixed(1)}, Node ${process.version}, analysis version ${ANALYSIS_VERSION}, ${RIDES} rides of ${HOURS} h`
	);
	for (const full of [false, true]) await measure(join(folder, full ? 'full' : 'empty'), files, full);
} finally {
	rmSync(folder, { recursive: true, force: true });
}

/** Rides that differ in their dates at least, so that none is a copy of another. */
function writeRides(into: string): void {
	mkdirSync(into);
	const simulated = Array.from({ length: SIMULATED }, (_, i) => {
		const spec = { ...randomSlippingSpec(100 + i), maxDurationS: HOURS * 3600, maxDistanceM: 300_000 };
		return simulateRide(spec, 100 + i).ride;
	});
	for (let i = 0; i < RIDES; i++) {
		const ride = simulated[i % SIMULATED];
		const startedAtMs = ride.startedAtMs + i * 86_400_000;
		writeFileSync(join(into, `ride-${String(i).padStart(5, '0')}.fit`), writeFit({ ...ride, startedAtMs }));
	}
}

async function measure(data: string, files: string, full: boolean): Promise<void> {
	const first = await startServer(data);
	await chooseName(first.origin, 'Bench');
	await first.stop();
	if (full) fill(data);
	const delayFile = `${data}-loop.json`;
	const preload = pathToFileURL(join(project, 'tests/bench/loopDelay.mjs')).href;
	const server = await startServer(data, {
		NODE_OPTIONS: `--import ${preload}`,
		SLIP_LEDGER_LOOP_FILE: delayFile
	});
	const cookie = await chooseName(server.origin, 'Bench');
	const pid = server.child.pid!;
	// as a browser does that was told what is being computed
	const pages = full ? [...PAGES, '/builds/1', '/compare'] : PAGES;
	for (const page of pages) await answerMs(`${server.origin}${page}?now=1`, cookie);
	const idle = processFigures(pid);
	const bare = await bareServer();
	const addresses = pages.map((page) => server.origin + page);
	const watching = () => watchServer(pid, addresses, cookie, bare.origin, join(data, 'ledger.sqlite'));
	const watch = watching();
	process.kill(pid, 'SIGUSR2');
	const from = performance.now();
	const uploadsMs = await riders(server.origin, files);
	const uploadedS = (performance.now() - from) / 1000;
	const counts = await waitForAll(join(data, 'ledger.sqlite'));
	const doneS = (performance.now() - from) / 1000;
	const { pagesMs, bareMs, most, course } = await watch();
	const after = processFigures(pid);
	const delay = await loopDelay(pid, delayFile);
	const meanwhile = watching();
	const verifyFrom = performance.now();
	const verified = await runCommand('verify', ['--json'], { SLIP_LEDGER_DATA: data });
	const verifyS = (performance.now() - verifyFrom) / 1000;
	const duringVerify = await meanwhile();
	bare.stop();
	await server.stop();
	console.log(`\n${full ? 'into a ledger of 10,000 rides' : 'into an empty ledger'}: ${counts}`);
	say('rides a second, from the first upload to the last event stored', RIDES / doneS, 'wanted >= 8');
	say('seconds until every upload was taken', uploadedS, `${RIDERS} riders at once`);
	const analysing = ({ childCpuS, readerCpuS }: ProcessFigures) => childCpuS - readerCpuS;
	say(
		'processor ms a ride, children that analyse',
		(1000 * (analysing(after) - analysing(idle))) / RIDES,
		''
	);
	for (const tenth of [1, 2, 5, 10]) sayTenth(course, tenth);
	say('processor s of the child that computes figures', after.readerCpuS - idle.readerCpuS, '');
	say(
		'processor ms a ride, server with its pages',
		(1000 * (after.serverCpuS - idle.serverCpuS)) / RIDES,
		''
	);
	say('upload of one ride, ms, middle', quantile(uploadsMs, 0.5), '');
	say('upload of one ride, ms, p95', quantile(uploadsMs, 0.95), '');
	say(`pages meanwhile, ms, middle of ${pagesMs.length}`, quantile(pagesMs, 0.5), '');
	say('pages meanwhile, ms, p95', quantile(pagesMs, 0.95), 'wanted <= 50 at the server');
	say('the same within the server, ms, middle', quantile(delay.pagesMs, 0.5), '');
	say('the same within the server, ms, p95', quantile(delay.pagesMs, 0.95), '');
	say('a process that does nothing, ms, middle', quantile(bareMs, 0.5), 'the machine');
	say('a process that does nothing, ms, p95', quantile(bareMs, 0.95), 'the machine');
	say('verify, s', verifyS, checkedParts(verified.stdout));
	say(
		`pages while it verifies, ms, middle of ${duringVerify.pagesMs.length}`,
		quantile(duringVerify.pagesMs, 0.5),
		''
	);
	say('pages while it verifies, ms, p95', quantile(duringVerify.pagesMs, 0.95), '');
	say('longest time that the event loop was held up, ms', delay.longestMs, '');
	say('event loop held up, ms, 99 of 100 turns', delay.p99Ms, '');
	say('server, MB resident at most', after.serverMostMb, 'wanted < 200');
	say('largest child that analyses, MB resident at most', most.childMostMb, 'wanted < 300');
	say('child that computes figures, MB resident at most', most.readerMostMb, '');
	say('channel store, KB a ride', storeKb(join(data, 'channels.sqlite'), full), 'wanted <= 150');
}

/** What verify went through, part by part; the rides that were written straight into the ledger have no files. */
function checkedParts(report: string): string {
	const { parts } = JSON.parse(report) as VerifyReport;
	return parts.map(({ name, checked, damages }) => `${name} ${checked}, ${damages} damaged`).join('; ');
}

/** What the server writes down of its event loop when it is asked. */
async function loopDelay(
	pid: number,
	file: string
): Promise<{ longestMs: number; p99Ms: number; pagesMs: number[] }> {
	process.kill(pid, 'SIGUSR2');
	while (!existsSync(file)) await new Promise((resolve) => setTimeout(resolve, 50));
	return JSON.parse(readFileSync(file, 'utf8'));
}

function say(what: string, value: number, beside: string): void {
	console.log(`${what}: ${value.toFixed(value < 20 ? 1 : 0)}${beside ? ` (${beside})` : ''}`);
}

/** 10,000 rides straight into the ledger, none of which is work for the runner: their files are not there. */
function fill(data: string): void {
	const ledger = join(data, 'ledger.sqlite');
	const filled = spawnSync('npx', ['tsx', 'tests/bench/manyRides.ts', '--fill', ledger], { cwd: project });
	if (filled.status !== 0) throw new Error(String(filled.stderr));
	const database = new Database(ledger);
	database.prepare(`ATTACH ? AS channels`).run(join(data, 'channels.sqlite'));
	database.exec(`
		INSERT INTO insertion_attempt (ride_id, version, attempts, failure)
			SELECT ride_id, version, 1, 'made for a bench' FROM result;
		INSERT INTO channels.channel (sha256, version, name, length, step) SELECT sha256, ${ANALYSIS_VERSION}, 'speedMps', 0, 1 FROM ride;
	`);
	database.close();
}

function riders(origin: string, files: string): Promise<number[]> {
	const child = spawn('npx', ['tsx', 'tests/bench/riders.ts', origin, files, String(RIDERS)], {
		cwd: project,
		stdio: ['ignore', 'pipe', 'inherit']
	});
	let text = '';
	child.stdout.on('data', (piece) => (text += piece));
	return new Promise((resolve, reject) =>
		child.once('close', (status) =>
			status === 0 ? resolve(JSON.parse(text)) : reject(new Error(`the riders ended with ${status}`))
		)
	);
}

/** How far it was at an instant: rides stored, and processor seconds until then. */
interface Course {
	readonly rides: number;
	readonly figures: ProcessFigures;
}

/** Asks for pages and looks at memory until it is told to end. */
function watchServer(pid: number, pages: readonly string[], cookie: string, bare: string, ledger: string) {
	const pagesMs: number[] = [];
	const bareMs: number[] = [];
	const course: Course[] = [];
	const database = new Database(ledger, { readonly: true });
	const stored = database.prepare<[], number>("SELECT count(*) FROM import WHERE stage = 'done'").pluck();
	let most: ProcessFigures = processFigures(pid);
	let ended = false;
	const asking = (async () => {
		for (let i = 0; !ended; i++) {
			pagesMs.push(await answerMs(pages[i % pages.length], cookie));
			bareMs.push(await answerMs(bare, cookie));
			const now = processFigures(pid);
			most = {
				...now,
				childMostMb: Math.max(most.childMostMb, now.childMostMb),
				readerMostMb: Math.max(most.readerMostMb, now.readerMostMb)
			};
			course.push({ rides: stored.get()!, figures: now });
			await new Promise((resolve) => setTimeout(resolve, PAGE_EVERY_MS));
		}
	})();
	return async () => {
		ended = true;
		await asking;
		database.close();
		return { pagesMs, bareMs, most, course };
	};
}

/** Processor time a ride within one tenth of the rides: flat is wanted. */
function sayTenth(course: readonly Course[], tenth: number): void {
	const at = (rides: number) => course.find((one) => one.rides >= rides) ?? course[course.length - 1];
	const [from, to] = [at(Math.ceil(((tenth - 1) * RIDES) / 10)), at(Math.floor((tenth * RIDES) / 10))];
	const rides = to.rides - from.rides;
	if (rides === 0) return;
	const ms = (of: (figures: ProcessFigures) => number) =>
		(1000 * (of(to.figures) - of(from.figures))) / rides;
	const children = ms(({ childCpuS, readerCpuS }) => childCpuS - readerCpuS).toFixed(0);
	console.log(
		`processor ms a ride, ${tenth}. tenth: ${children} in children, ${ms(({ serverCpuS }) => serverCpuS).toFixed(0)} in the server`
	);
}

/** A process that answers every request with one letter. */
async function bareServer() {
	const code = `require('node:http').createServer((_, r) => r.end('x')).listen(0, '127.0.0.1', function () { console.log(this.address().port) })`;
	const child = spawn(process.execPath, ['-e', code], { stdio: ['ignore', 'pipe', 'inherit'] });
	const port = await new Promise<string>((resolve) =>
		child.stdout.once('data', (text) => resolve(String(text).trim()))
	);
	return { origin: `http://127.0.0.1:${port}/`, stop: () => child.kill() };
}

async function answerMs(url: string, cookie: string): Promise<number> {
	const began = performance.now();
	const answer = await fetch(url, { headers: { cookie, 'x-bench': 'page' } });
	await answer.text();
	if (answer.status !== 200) throw new Error(`${url} answered ${answer.status}`);
	return performance.now() - began;
}

/** Waits until no import is open any more; gives back what became of them. */
async function waitForAll(file: string): Promise<string> {
	const database = new Database(file, { readonly: true });
	const open = database.prepare(
		`SELECT count(*) AS open FROM import WHERE stage IN ('receiving', 'waiting', 'analysing')`
	);
	while ((open.get() as { open: number }).open > 0) await new Promise((resolve) => setTimeout(resolve, 50));
	const stages = database.prepare('SELECT stage, count(*) AS rides FROM import GROUP BY stage').all() as {
		stage: string;
		rides: number;
	}[];
	database.close();
	return stages.map(({ stage, rides }) => `${rides} ${stage}`).join(', ');
}

function storeKb(file: string, full: boolean): number {
	const database = new Database(file, { readonly: true });
	const { bytes } = database
		.prepare('SELECT page_count * page_size AS bytes FROM pragma_page_count(), pragma_page_size()')
		.get() as { bytes: number };
	const { own } = database
		.prepare('SELECT coalesce(sum(length(packed)), 0) AS own FROM channel_chunk')
		.get() as { own: number };
	database.close();
	// a full ledger's store also has a row for each ride that was made for the bench
	return (full ? own : bytes) / RIDES / 1024;
}

function quantile(values: readonly number[], share: number): number {
	const sorted = [...values].sort((a, b) => a - b);
	return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}
