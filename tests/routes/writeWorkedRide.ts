/** Writes src/routes/method/workedRide.json from the example workshop: npx tsx tests/routes/writeWorkedRide.ts */
import { readFileSync, writeFileSync } from 'node:fs';
import { decodeRide } from '../../src/lib/ride/decodeRide';
import { storedRideOf, WORKED_FILE } from './storedRideOf';

const project = new URL('../../', import.meta.url).pathname;
const truth = JSON.parse(readFileSync(`${project}sample-rides/truth.json`, 'utf8'));
const ride = await decodeRide(
	new Uint8Array(readFileSync(`${project}sample-rides/${WORKED_FILE}`)),
	WORKED_FILE
);
const stored = storedRideOf(ride, truth[WORKED_FILE.replace('.fit', '')]);
writeFileSync(`${project}src/routes/method/workedRide.json`, `${JSON.stringify(stored)}\n`);
