import { writeFileSync } from 'node:fs';
import { shareLimits } from '../../src/lib/reliability/shareLimits';
import { analyseRide } from '../../src/lib/slip/analyseRide';
import { ANALYSIS_VERSION } from '../../src/lib/slip/analysisVersion';
import { detectionChance } from '../../src/lib/slip/detectionChance';
import { INSERTION_PLACES } from '../../src/lib/slip/insertionPlaces';
import { insertionTest, type InsertedSlip } from '../../src/lib/slip/insertionTest';
import { LEAST_REPORTED_DEG } from '../../src/lib/slip/reportLimits';
import { labelledRides, type LabelledRide } from './training/labelledRides';
import { generatedRide } from './training/trainingRides';

/**
 * Slips of known sizes put into rides: what share of them is found, and what the model of the observed distance
 * had foretold. Run: npx tsx tests/bench/insertion.ts [--print]
 */

const SEED = 20_261_125;
const GENERATED_SEEDS = 70_000;
const GENERATED_RIDES = 60;

const lines: string[] = [];
const say = (line = '') => {
	console.log(line);
	lines.push(line);
};

interface Tried {
	slips: InsertedSlip[];
	observedM: number;
	changeM: number;
	rides: number;
	notRun: number;
	passes: number;
	seconds: number;
}

function tryAll(rides: Iterable<LabelledRide>): Tried {
	const tried: Tried = { slips: [], observedM: 0, changeM: 0, rides: 0, notRun: 0, passes: 0, seconds: 0 };
	for (const { ride, bike } of rides) {
		const started = process.cpuUsage().user;
		const result = insertionTest(ride, bike, SEED + tried.rides, (slip) => tried.slips.push(slip));
		tried.seconds += (process.cpuUsage().user - started) / 1e6;
		tried.rides++;
		tried.passes += result.passes;
		if (result.put === 0) tried.notRun++;
		else {
			tried.observedM += analyseRide(ride, bike).observedM;
			tried.changeM += result.observedChangeM;
		}
	}
	return tried;
}

const percent = (share: number) => `${(100 * share).toFixed(0)} %`;

function foundOf(slips: readonly InsertedSlip[]): string {
	if (slips.length === 0) return 'none put in';
	const found = slips.filter((slip) => slip.found).length;
	const { share, lower, upper } = shareLimits(found, slips.length, 0.95);
	return `${found}/${slips.length} = ${percent(share)} (${percent(lower)} to ${percent(upper)})`;
}

function row(name: string, slips: readonly InsertedSlip[]): void {
	const told = slips.filter(({ limitDeg }) => Number.isFinite(limitDeg));
	const foretold =
		told.reduce((sum, slip) => sum + detectionChance(slip.limitDeg, slip.crankDeg), 0) / told.length;
	const measured = told.filter(({ found }) => found).length / told.length;
	const off = told.length > 0 ? `${(100 * (foretold - measured)).toFixed(0)} points` : '';
	say(
		`| ${name} | ${foundOf(slips.filter((slip) => slip.observed))} | ${foundOf(slips.filter((slip) => !slip.observed))} | ${told.length > 0 ? `${percent(foretold)} / ${percent(measured)}` : 'none'} | ${off} |`
	);
}

function report(name: string, tried: Tried): void {
	const { slips } = tried;
	say(`### ${name}`);
	say();
	say(
		`${tried.rides} rides (${tried.notRun} without a place for a slip), ${slips.length} slips in ${tried.passes} passes, ${(tried.seconds / tried.rides).toFixed(2)} s of processor time a ride; largest change of the observed distance in a pass ${((100 * tried.changeM) / tried.observedM).toFixed(2)} % on average.`
	);
	say();
	say('| slips | found, observed | found, elsewhere | foretold / measured where a limit is stated | off |');
	say('| --- | --- | --- | --- | --- |');
	for (const size of [...new Set(slips.map(({ crankDeg }) => crankDeg))].sort((a, b) => a - b)) {
		if (size >= LEAST_REPORTED_DEG)
			row(
				`${size} degrees`,
				slips.filter(({ crankDeg }) => crankDeg === size)
			);
	}
	const large = slips.filter(({ crankDeg }) => crankDeg >= 90);
	for (const place of INSERTION_PLACES)
		row(
			`>= 90, ${place}`,
			large.filter((slip) => slip.place === place)
		);
	const torques = [...new Set(large.map(({ torqueFromNm }) => torqueFromNm))];
	for (const from of torques.sort((a, b) => (a ?? Infinity) - (b ?? Infinity)))
		row(
			`>= 90, from ${from ?? 'not known'} Nm`,
			large.filter(({ torqueFromNm }) => torqueFromNm === from)
		);
	row('>= 90, all', large);
	say();
}

function* generated(): Generator<LabelledRide> {
	for (let k = 0; k < GENERATED_RIDES; k++) {
		const ride = generatedRide(GENERATED_SEEDS + k, true);
		if (ride) yield ride;
	}
}

async function main() {
	say(`# Slips put into rides, analysis version ${ANALYSIS_VERSION}`);
	say();
	say(
		'Written by `npx tsx tests/bench/insertion.ts`. Foretold is what the model of the observed distance says of'
	);
	say(
		'each place and size; it should lie within 10 points of what is measured. Slips go as often to hard torque,'
	);
	say('shifts and starts as to steady riding: the shares are not those of a mean kilometre.');
	say();
	for (const folder of ['simulated', 'real']) {
		const rides = (await labelledRides(folder)).filter(({ events }) => events.length === 0);
		if (rides.length === 0) say(`Labelled rides, ${folder}: skipped, the folder is not here.\n`);
		else
			report(
				`Labelled rides without slips, ${folder} (the detector has learned from these rides)`,
				tryAll(rides)
			);
	}
	const root = new URL('../../', import.meta.url).pathname;
	report('Example workshop (sample-rides)', tryAll(await labelledRides('sample-rides', root)));
	report('Generated healthy rides, seeds that no training uses', tryAll(generated()));
	if (!process.argv.includes('--print'))
		writeFileSync(new URL('./insertion-figures.md', import.meta.url).pathname, `${lines.join('\n')}\n`);
}

await main();
