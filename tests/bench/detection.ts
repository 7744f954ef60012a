/**
 * Measures slip detection and writes tests/bench/detection-figures.md.
 *
 *   npx tsx tests/bench/detection.ts             every set
 *   npx tsx tests/bench/detection.ts --km 1000   fewer generated healthy kilometres (5000 without it)
 *   npx tsx tests/bench/detection.ts --print     print only
 *
 * Sets: the labelled rides beside the project (left out with a word where missing), the example workshop's rides, and
 * generated healthy and slipping rides of seeds that no training uses. The detector has learned from the labelled
 * rides themselves: its figures there flatter it, and the figures by rides left out stand beside them.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { poissonRateLimits } from '../../src/lib/reliability/poissonRateLimits';
import { analyseRide } from '../../src/lib/slip/analyseRide';
import { ANALYSIS_VERSION } from '../../src/lib/slip/analysisVersion';
import { quantile } from '../../src/lib/drivetrain/median';
import { strengthTable, type StrengthCount } from './strengthTable';
import { labelledRides, type LabelledRide } from './training/labelledRides';
import { addRide, BANDS, emptyScore, type Score } from './training/scoreEvents';
import { generatedRide } from './training/trainingRides';

const HEALTHY_SEEDS = 50_000;
const SLIPPING_SEEDS = 60_000;
const SLIPPING_RIDES = 40;

const lines: string[] = [];
const say = (line = '') => {
	console.log(line);
	lines.push(line);
};

interface Speed {
	samples: number;
	/** processor time, because other work may share the machine */
	seconds: number;
}

function scoreRide(score: Score, labelled: LabelledRide, speed: Speed, strengths: StrengthCount[]) {
	const started = process.cpuUsage().user;
	const analysis = analyseRide(labelled.ride, labelled.bike);
	speed.seconds += (process.cpuUsage().user - started) / 1e6;
	speed.samples += labelled.ride.durationS;
	const events = analysis.events.map((event) => ({
		startS: event.startS,
		overrunDeg: event.overrunCrankDeg.value,
		strength: event.strength
	}));
	const { wrong } = addRide(
		score,
		labelled.events,
		labelled.km,
		events,
		analysis.observed,
		analysis.observedM,
		analysis.totalM
	);
	for (const event of events) strengths.push({ strength: event.strength, slip: !wrong.includes(event) });
}

function report(name: string, score: Score) {
	const share = (hit: number, all: number) =>
		all > 0 ? `${hit}/${all} = ${((100 * hit) / all).toFixed(0)} %` : 'none';
	const bands = score.hit.map((hit, i) => {
		const upper = BANDS[i + 1] === Infinity ? 'and more' : `to ${BANDS[i + 1]}`;
		return `${BANDS[i]} ${upper}: ${share(hit, score.all[i])}`;
	});
	say(`### ${name}`);
	say();
	say(`- found by overrun in crank degrees: ${bands.join('; ')}`);
	if (score.kmHealthy > 0) {
		const { rate, lower, upper } = poissonRateLimits(score.falseHealthy, score.kmHealthy, 0.95);
		say(
			`- false on rides without slip: ${score.falseHealthy} in ${score.kmHealthy.toFixed(0)} km = ${(1000 * rate).toFixed(1)} per 1000 km (95 % limits ${(1000 * lower).toFixed(1)} to ${(1000 * upper).toFixed(1)})`
		);
	}
	say(
		`- false on all rides: ${score.falseAll} in ${score.kmAll.toFixed(0)} km; told twice: ${score.toldTwice}`
	);
	say(
		`- observed: ${((100 * score.observedM) / score.totalM).toFixed(0)} % of the distance; of the slips of 90 degrees and more there, found ${share(score.kept, score.promised)}`
	);
	if (score.onsetErrorS.length > 0) {
		const onset = [0.5, 0.95].map((p) => quantile(score.onsetErrorS, p).toFixed(1));
		const size = [0.1, 0.5, 0.9].map((p) => quantile(score.sizeRatio, p).toFixed(2));
		say(
			`- onset error p50 ${onset[0]} s, p95 ${onset[1]} s; size found / true p10 ${size[0]}, p50 ${size[1]}, p90 ${size[2]}`
		);
	}
	say();
}

async function main() {
	const speed: Speed = { samples: 0, seconds: 0 };
	const strengths: StrengthCount[] = [];
	const wantedKm = process.argv.includes('--km')
		? Number(process.argv[process.argv.indexOf('--km') + 1])
		: 5000;
	say(`# Slip detection, analysis version ${ANALYSIS_VERSION}`);
	say();
	say('Written by `npx tsx tests/bench/detection.ts`. A detection within 3 s of a true event is a hit.');
	say();
	for (const folder of ['simulated', 'real', 'logger']) {
		const rides = await labelledRides(folder);
		if (rides.length === 0) {
			say(`Labelled rides, ${folder}: skipped, the folder is not here.`);
			say();
			continue;
		}
		const score = emptyScore();
		for (const ride of rides)
			scoreRide(score, ride, folder === 'logger' ? { samples: 0, seconds: 0 } : speed, []);
		const learned = folder === 'logger' ? '' : ' (the detector has learned from these rides)';
		report(`Labelled rides, ${folder}${learned}`, score);
	}
	const example = emptyScore();
	const root = new URL('../../', import.meta.url).pathname;
	for (const ride of await labelledRides('sample-rides', root)) scoreRide(example, ride, speed, strengths);
	report('Example workshop (sample-rides)', example);
	const healthy = emptyScore();
	for (let seed = HEALTHY_SEEDS; healthy.kmAll < wantedKm; seed++) {
		const ride = generatedRide(seed, true);
		if (ride) scoreRide(healthy, ride, speed, strengths);
	}
	report('Generated healthy rides, seeds that no training uses', healthy);
	const slipping = emptyScore();
	for (let k = 0; k < SLIPPING_RIDES; k++) {
		const ride = generatedRide(SLIPPING_SEEDS + k, false);
		if (ride) scoreRide(slipping, ride, speed, strengths);
	}
	report('Generated slipping rides, seeds that no training uses', slipping);
	say('### Strength of signs');
	say();
	for (const row of strengthTable(strengths)) say(row);
	say();
	const leftOut = new URL('./training/left-out-figures.md', import.meta.url).pathname;
	if (existsSync(leftOut)) say(readFileSync(leftOut, 'utf8').trim());
	say();
	say(
		`Speed: ${Math.round(speed.samples / speed.seconds / 1000)} thousand samples a second of processor time, logger tables left out.`
	);
	if (!process.argv.includes('--print')) {
		writeFileSync(new URL('./detection-figures.md', import.meta.url).pathname, `${lines.join('\n')}\n`);
	}
}

await main();
