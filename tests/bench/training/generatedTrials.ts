/**
 * Slips of generated rides of many devices, none of which the scorer was taught, and whether the detector as it lies in
 * src/lib/slip finds them. `generatedTrials` starts this file twice, once for each kind of ride:
 *
 *   npx tsx tests/bench/training/generatedTrials.ts slipping|healthy FILE
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import { driveSignals } from '../../../src/lib/drivetrain/driveSignals';
import { DEFAULT_CIRCUMFERENCE_M } from '../../../src/lib/drivetrain/nameGears';
import { secondGrid } from '../../../src/lib/drivetrain/secondGrid';
import { analyseRide } from '../../../src/lib/slip/analyseRide';
import { insertionTest } from '../../../src/lib/slip/insertionTest';
import { rideContext } from '../../../src/lib/slip/rideContext';
import type { LabelledRide, TrueEvent } from './labelledRides';
import type { JudgedTrial } from './judgeObserved';
import { observationRows } from './observationRows';
import { inOwnProcess } from './ownProcess';
import { FOLDS } from './folds';
import { PLAN } from './plan';
import { addRide, emptyScore } from './scoreEvents';
import { generatedRide } from './trainingRides';

/** Slips of one ride that could show: features of the second in which each begins, crank degrees, and whether it was found. */
export interface RideTrials {
	readonly seed: number;
	readonly trials: readonly { features: Float64Array; crankDeg: number; found: boolean }[];
}

/** Smaller ones are not reported, whatever they look like. */
export const LEAST_TRIED_DEG = 45;

/** Trials of one generated ride: its own slips, or slips put into it where it has none. */
export function trialsOfRide(labelled: LabelledRide, slipping: boolean, seed: number): RideTrials {
	const tried = slipping ? ownSlips(labelled) : slipsPutIn(labelled, seed);
	const { ride, bike } = labelled;
	const grid = secondGrid(ride, bike.circumferenceM ?? DEFAULT_CIRCUMFERENCE_M);
	const events = tried.map(({ event }) => event);
	const { atEvents } = observationRows(rideContext(driveSignals(grid), bike), labelled, events, false);
	return {
		seed,
		trials: tried.flatMap(({ event: { crankDeg }, found }, i) => {
			const features = atEvents[i];
			return features && crankDeg >= LEAST_TRIED_DEG ? [{ features, crankDeg, found }] : [];
		})
	};
}

/**
 * A labelled slip weighs 1, a generated one at most so much and all of a ride together no more than this many: one device
 * that slips five hundred times stands for no more than another.
 */
const SLIP_WEIGHT = 0.3;
const FULL_WEIGHTS = 8;

/** Trials of all generated rides of the plan, gathered beside each other; what lies in the folder is not gathered again. */
export async function generatedTrials(folder: string): Promise<JudgedTrial[]> {
	const kinds = ['slipping', 'healthy'];
	const files = kinds.map((kind) => join(folder, `trials-${kind}`));
	await Promise.all(
		files.map((file, i) => (existsSync(file) ? null : inOwnProcess('generatedTrials.ts', [kinds[i], file])))
	);
	return files.flatMap((file, i) =>
		(deserialize(readFileSync(file)) as RideTrials[]).flatMap((ride) =>
			weighed(ride, kinds[i] === 'slipping')
		)
	);
}

/** Those of one ride as the model of the observed distance learns from them. */
export function weighed({ seed, trials }: RideTrials, slipping: boolean): JudgedTrial[] {
	const weight = SLIP_WEIGHT * Math.min(1, FULL_WEIGHTS / trials.length);
	return trials.map((trial) => ({
		...trial,
		weight,
		fold: seed % FOLDS.length,
		origin: 'generated',
		labelled: slipping
	}));
}

interface Tried {
	readonly event: TrueEvent;
	readonly found: boolean;
}

function ownSlips({ ride, bike, events, km }: LabelledRide): Tried[] {
	const reported = analyseRide(ride, bike).events.map(({ startS, overrunCrankDeg, strength }) => ({
		startS,
		overrunDeg: overrunCrankDeg.value,
		strength
	}));
	const slips = events.filter((event) => event.kind !== 'chain skip');
	const { missed } = addRide(emptyScore(), slips, km, reported, [], 0, 0);
	return slips.map((event) => ({ event, found: !missed.includes(event) }));
}

function slipsPutIn({ ride, bike }: LabelledRide, seed: number): Tried[] {
	const tried: Tried[] = [];
	insertionTest(ride, bike, seed, ({ second, crankDeg, found }) =>
		tried.push({ event: { t0: second, t1: second, kind: 'slip', crankDeg }, found })
	);
	return tried;
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
	const [kind, into] = process.argv.slice(2);
	const rides: RideTrials[] = [];
	for (let k = 0; k < PLAN.trialRides; k++) {
		const slipping = kind === 'slipping';
		const seed = (slipping ? PLAN.firstSlippingTrial : PLAN.firstHealthyTrial) + k;
		const labelled = generatedRide(seed, !slipping);
		if (labelled) rides.push(trialsOfRide(labelled, slipping, seed));
	}
	writeFileSync(into, serialize(rides));
}
