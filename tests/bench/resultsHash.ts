/**
 * Shows that a change leaves every result as it was, to the last bit:
 *
 *   npx tsx tests/bench/resultsHash.ts --keep before.json      before the change
 *   npx tsx tests/bench/resultsHash.ts --against before.json   after it: names every ride that came out otherwise
 *
 * A ride's hash goes over what the ledger keeps of it (events, stretches, exposure, learning, warnings, signature, all
 * to the last digit), its traces as computed, the traces as packed and, with --insertion, the slips put into it. Rides:
 * the example workshop, the labelled rides where their folder is, generated rides. Numbers of one engine and machine:
 * the file is for comparing two states of the program, not for keeping.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { inflateRawSync } from 'node:zlib';
import type { Bike } from '../../src/lib/drivetrain/bike';
import { decodeRide } from '../../src/lib/ride/decodeRide';
import { analyseRide } from '../../src/lib/slip/analyseRide';
import { insertionTest } from '../../src/lib/slip/insertionTest';
import { analyseBytes } from '../../src/jobs/analysis/analyseBytes';
import { LABELLED } from './training/labelledRides';
import { generatedRide } from './training/trainingRides';

const GENERATED_FROM = 70_000;
const GENERATED = 16;
const withInsertion = process.argv.includes('--insertion');

const hashes: Record<string, string> = {};
const root = new URL('../../', import.meta.url).pathname;
for (const folder of [
	`${root}sample-rides/`,
	...['simulated', 'real', 'logger'].map((f) => LABELLED + f + '/')
]) {
	if (!existsSync(folder)) {
		console.log(`${folder}: left out, it is not here`);
		continue;
	}
	const files = readdirSync(folder).filter((name) => /\.(fit|tcx|gpx|csv)$/.test(name));
	for (const name of files) hashes[name] = await hashOfFile(readFileSync(folder + name), name);
}
for (let seed = GENERATED_FROM; seed < GENERATED_FROM + GENERATED; seed++) {
	const labelled = generatedRide(seed, seed % 2 === 0);
	if (!labelled) continue;
	const { traces, ...rest } = analyseRide(labelled.ride, labelled.bike);
	const hash = createHash('sha256').update(words(rest));
	for (const values of Object.values(traces)) hash.update(bits(values));
	hashes[`generated ${seed}`] = hash.digest('hex');
}

const all = createHash('sha256').update(JSON.stringify(hashes)).digest('hex');
console.log(`${Object.keys(hashes).length} rides: ${all}`);
const keep = argument('--keep');
if (keep) writeFileSync(keep, JSON.stringify(hashes, null, '\t'));
const against = argument('--against');
if (against) compare(JSON.parse(readFileSync(against, 'utf8')));

function compare(before: Record<string, string>): void {
	const names = [...new Set([...Object.keys(before), ...Object.keys(hashes)])];
	const different = names.filter((name) => before[name] !== hashes[name]);
	for (const name of different) console.log(`otherwise: ${name}`);
	console.log(
		different.length === 0 ? 'every result is as it was' : `${different.length} rides came out otherwise`
	);
	process.exitCode = different.length === 0 ? 0 : 1;
}

async function hashOfFile(bytes: Uint8Array, name: string): Promise<string> {
	const hash = createHash('sha256');
	try {
		for (const bike of [
			{},
			{ circumferenceM: 2.105, chainrings: [34, 50], cassette: [11, 13, 15, 17, 19, 21, 24, 28] }
		] as Bike[]) {
			const { channels, ...rest } = await analyseBytes(bytes, name, bike);
			hash.update(words(rest));
			for (const channel of channels) {
				for (const { packed, ...chunk } of channel.chunks) {
					hash
						.update(`${channel.name} ${channel.step} ${JSON.stringify(chunk)}`)
						.update(inflateRawSync(packed));
				}
			}
		}
		const ride = await decodeRide(bytes, name);
		for (const channel of Object.values(ride.channels))
			hash.update(bits(channel.timeS)).update(bits(channel.value));
		const { traces } = analyseRide(ride);
		for (const values of Object.values(traces)) hash.update(bits(values));
		if (withInsertion) hash.update(words(insertionTest(ride, {}, 7)));
	} catch (error) {
		hash.update(String(error));
	}
	return hash.digest('hex');
}

/** JSON that tells NaN, infinities, -0 and typed arrays apart. */
function words(value: unknown): string {
	return JSON.stringify(value, (_, part) => {
		if (typeof part === 'number' && (!Number.isFinite(part) || Object.is(part, -0)))
			return Object.is(part, -0) ? '-0' : String(part);
		if (ArrayBuffer.isView(part))
			return Array.from(part as unknown as ArrayLike<number>, (v) => (Number.isNaN(v) ? 'NaN' : v));
		return part;
	});
}

/** The bytes of numbers, with one NaN for all. */
function bits(values: ArrayLike<number>): Buffer {
	const copy = Float64Array.from(values, (value) => (Number.isNaN(value) ? NaN : value));
	return Buffer.from(copy.buffer);
}

function argument(name: string): string | undefined {
	const at = process.argv.indexOf(name);
	return at < 0 ? undefined : process.argv[at + 1];
}
