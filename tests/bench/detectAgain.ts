// One of the processes that detect at the same time, for tests/bench/pipeline.ts: the example's rides are decoded and
// gone through until the code is warm; then, told to begin, again and again for so many seconds.
// Prints "ready", and in the end how many values a second it went through by the clock.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { decodeRide } from '../../src/lib/ride/decodeRide';
import type { Ride } from '../../src/lib/ride/ride';
import { analyseRide } from '../../src/lib/slip/analyseRide';
import { project } from '../faults/runCommand';

const SECONDS = Number(process.argv[2]);
const folder = join(project, 'sample-rides');
const rides: Ride[] = [];
for (const name of readdirSync(folder).filter((file) => file.endsWith('.fit'))) {
	// one of them has no speed and is refused
	const ride = await decodeRide(readFileSync(join(folder, name)), name).catch(() => null);
	if (ride) rides.push(ride);
}
for (const ride of [...rides, ...rides]) analyseRide(ride);
console.log('ready');
await new Promise((resolve) => process.stdin.once('data', resolve));
const from = performance.now();
let values = 0;
for (let i = 0; performance.now() - from < SECONDS * 1000; i++) {
	const ride = rides[i % rides.length];
	analyseRide(ride);
	values += ride.durationS;
}
console.log(String((values * 1000) / (performance.now() - from)));
process.exit();
