// Speed of the pipeline, as ratios in one run and as the time a person waits: npm run bench
// One ride is made by the project's own simulator (five hours at one record a second, and the roughest of its kind);
// the others are those of the example workshop. Ratios and rates are of processor time: other work may share the
// machine. Bulk uploads, memory and pages meanwhile: tests/bench/bulk.ts.
import FitParser from 'fit-file-parser';
import { spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { createInterface } from 'node:readline';
import { randomSlippingSpec } from '../../sample-rides/generator/randomSpecs';
import { simulateRide } from '../../sample-rides/generator/simulateRide';
import { writeFit } from '../../sample-rides/generator/writeFit';
import { analyseBytes } from '../../src/jobs/analysis/analyseBytes';
import { decodeRide } from '../../src/lib/ride/decodeRide';
import type { Ride } from '../../src/lib/ride/ride';
import { analyseRide } from '../../src/lib/slip/analyseRide';
import { ANALYSIS_VERSION } from '../../src/lib/slip/analysisVersion';
import { project } from '../faults/runCommand';
import { startServer } from '../faults/runCommand';
import { chooseName, uploadFile, waitForImport } from './serverClient';

const ROUNDS = 15;
/** the first rounds run code that is not compiled yet; a child process reads many files in its life */
const WARM_UP = 5;
const HOURS = 5;
/** how long all processors detect at once */
const TOGETHER_S = 20;

const bytes = fiveHourRide();
console.log(`ride: ${HOURS} h at 1 Hz, ${(bytes.length / 1024).toFixed(0)} KB of FIT`);
const example = await exampleRides();
console.log(
	`${cpus().length} processors (${cpus()[0].model.trim()}), load ${loadavg()[0].toFixed(1)}, Node ${process.version}, analysis version ${ANALYSIS_VERSION}`
);
await ratioToBareDecoding(
	'example workshop',
	example.map(({ file }) => file),
	6
);
await ratioToBareDecoding('the five hours', [bytes], ROUNDS);
const fiveHours = await decodeRide(bytes, 'bench.fit');
detectionRate(
	'example workshop',
	example.map(({ ride }) => ride),
	6
);
detectionRate('the five hours', [fiveHours], ROUNDS);
await onAllProcessors();
await fromUploadToEvents(bytes);

async function exampleRides(): Promise<{ file: Uint8Array; ride: Ride }[]> {
	const folder = join(project, 'sample-rides');
	const rides: { file: Uint8Array; ride: Ride }[] = [];
	for (const name of readdirSync(folder).filter((name) => name.endsWith('.fit'))) {
		const file = readFileSync(join(folder, name));
		// one of them has no speed and is refused; one is cut off, which the bare parser refuses
		const ride = await bareDecoding(file)
			.then(() => decodeRide(file, name))
			.catch(() => null);
		if (ride) rides.push({ file, ride });
	}
	return rides;
}

function fiveHourRide(): Uint8Array {
	const spec = randomSlippingSpec(5);
	const lasting = { ...spec, maxDurationS: HOURS * 3600, maxDistanceM: 400_000 };
	return writeFit(simulateRide(lasting, 5).ride);
}

/** Decode, analyse and pack for the ledger against fit-file-parser alone, in turn, on the same bytes. */
async function ratioToBareDecoding(
	name: string,
	files: readonly Uint8Array[],
	rounds: number
): Promise<void> {
	const bare: number[] = [];
	const whole: number[] = [];
	for (let round = -WARM_UP; round < rounds; round++) {
		let bareMs = 0;
		let wholeMs = 0;
		for (const file of files) {
			bareMs += await processorMs(() => bareDecoding(file));
			wholeMs += await processorMs(() => analyseBytes(file, 'bench.fit'));
		}
		if (round < 0) continue;
		bare.push(bareMs);
		whole.push(wholeMs);
	}
	console.log(
		`${name}: bare fit-file-parser ${spread(bare)} ms; decode to stored form ${spread(whole)} ms; ` +
			`ratio of medians ${(median(whole) / median(bare)).toFixed(2)} (wanted <= 3.0)`
	);
}

/** Detection at one value a second: a decoded ride to events, observed stretches, exposure and traces. */
function detectionRate(name: string, rides: readonly Ride[], rounds: number): void {
	const rates: number[] = [];
	for (let round = 0; round < rounds; round++) {
		const from = process.cpuUsage();
		let samples = 0;
		for (const ride of rides) {
			analyseRide(ride);
			samples += ride.durationS;
		}
		rates.push(samples / millisecondsSince(from));
	}
	console.log(`${name}: detection ${spread(rates)} thousand samples a second (wanted >= 300)`);
}

/** What the machine goes through when all rides are analysed again: a process a processor, by the clock. */
async function onAllProcessors(): Promise<void> {
	const children = cpus().map(() =>
		spawn(process.execPath, ['--import', 'tsx', 'tests/bench/detectAgain.ts', String(TOGETHER_S)], {
			cwd: project,
			stdio: ['pipe', 'pipe', 'inherit']
		})
	);
	const lines = children.map(({ stdout }) => createInterface({ input: stdout })[Symbol.asyncIterator]());
	const next = () => Promise.all(lines.map(async (line) => String((await line.next()).value)));
	const said = await next();
	if (said.some((word) => word !== 'ready')) throw new Error('A process that should detect did not start.');
	for (const { stdin } of children) stdin.write('\n');
	const rates = (await next()).map(Number);
	const all = rates.reduce((sum, rate) => sum + rate, 0) / 1000;
	console.log(
		`example workshop, ${children.length} processes at once: detection ${all.toFixed(0)} thousand samples a second by the clock`
	);
}

function millisecondsSince(from: NodeJS.CpuUsage): number {
	const { user, system } = process.cpuUsage(from);
	return (user + system) / 1000;
}

function bareDecoding(file: Uint8Array): Promise<unknown> {
	const parser = new FitParser({ force: true, mode: 'list', lengthUnit: 'm', speedUnit: 'm/s' });
	return new Promise((resolve, reject) =>
		parser.parse(Buffer.from(file), (error, data) =>
			error ? reject(new Error(String(error))) : resolve(data)
		)
	);
}

/** What a rider waits for: the file sent to a real server until its events are in the ledger. */
async function fromUploadToEvents(file: Uint8Array): Promise<void> {
	const waits: number[] = [];
	for (let round = 0; round < 3; round++) {
		const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-bench-'));
		const server = await startServer(folder);
		const cookie = await chooseName(server.origin, 'Bench');
		const from = performance.now();
		const importId = await uploadFile(server.origin, cookie, 'bench.fit', file);
		const stage = await waitForImport(server.origin, cookie, importId);
		waits.push(performance.now() - from);
		await server.stop();
		rmSync(folder, { recursive: true, force: true });
		if (stage !== 'done') throw new Error(`the import ended as "${stage}"`);
	}
	console.log(`upload to events of a ${HOURS} h ride: ${spread(waits)} ms (fresh server each time)`);
}

async function processorMs(work: () => Promise<unknown>): Promise<number> {
	const from = process.cpuUsage();
	await work();
	return millisecondsSince(from);
}

function median(values: readonly number[]): number {
	return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

function spread(values: readonly number[]): string {
	return `${median(values).toFixed(0)} (${Math.min(...values).toFixed(0)} to ${Math.max(...values).toFixed(0)})`;
}
