// Speed of the pipeline, as ratios in one run and as the time a person waits: npm run bench
// The ride is made by the project's own simulator: five hours at one record a second.
import FitParser from 'fit-file-parser';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { randomSlippingSpec } from '../../sample-rides/generator/randomSpecs';
import { simulateRide } from '../../sample-rides/generator/simulateRide';
import { writeFit } from '../../sample-rides/generator/writeFit';
import { analyseBytes } from '../../src/jobs/analysis/analyseBytes';
import { startServer } from '../faults/runCommand';
import { chooseName, uploadFile, waitForImport } from './serverClient';

const ROUNDS = 15;
/** the first rounds run code that is not compiled yet; a child process reads many files in its life */
const WARM_UP = 5;
const HOURS = 5;

const bytes = fiveHourRide();
console.log(`ride: ${HOURS} h at 1 Hz, ${(bytes.length / 1024).toFixed(0)} KB of FIT`);
await ratioToBareDecoding(bytes);
await fromUploadToEvents(bytes);

function fiveHourRide(): Uint8Array {
	const spec = randomSlippingSpec(5);
	const lasting = { ...spec, maxDurationS: HOURS * 3600, maxDistanceM: 400_000 };
	return writeFit(simulateRide(lasting, 5).ride);
}

/** Decode, analyse and pack for the ledger against fit-file-parser alone, in turn, on the same bytes. */
async function ratioToBareDecoding(file: Uint8Array): Promise<void> {
	const bare: number[] = [];
	const whole: number[] = [];
	for (let round = 0; round < ROUNDS; round++) {
		const bareMs = await timed(() => bareDecoding(file));
		const wholeMs = await timed(() => analyseBytes(file, 'bench.fit'));
		if (round < WARM_UP) continue;
		bare.push(bareMs);
		whole.push(wholeMs);
	}
	console.log(
		`bare fit-file-parser ${spread(bare)} ms; decode to stored form ${spread(whole)} ms; ` +
			`ratio of medians ${(median(whole) / median(bare)).toFixed(2)} (wanted <= 3.0)`
	);
}

function bareDecoding(file: Uint8Array): Promise<unknown> {
	const parser = new FitParser({ force: true, mode: 'list', lengthUnit: 'm', speedUnit: 'm/s' });
	return new Promise((resolve, reject) =>
		parser.parse(Buffer.from(file), (error, data) => (error ? reject(new Error(error)) : resolve(data)))
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

async function timed(work: () => Promise<unknown>): Promise<number> {
	const from = performance.now();
	await work();
	return performance.now() - from;
}

function median(values: readonly number[]): number {
	return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

function spread(values: readonly number[]): string {
	return `${median(values).toFixed(0)} (${Math.min(...values).toFixed(0)} to ${Math.max(...values).toFixed(0)})`;
}
