/**
 * Learns the scorer of candidates (trees and nets) and the probability of finding a slip, and writes them to src/lib/slip/model.
 *
 *   npx tsx tests/bench/training/train.ts            judge by rides left out, then learn from everything and write
 *   npx tsx tests/bench/training/train.ts --judge    judge only
 *   ... --rows FILE     keeps what was gathered of all rides there, and reads it where the file is there already: for
 *                       trainings that change no feature and no ride
 *   ... --kept FOLDER   keeps each set of trees, each net and the trials on generated rides there, and goes on from what lies there already
 *   ... --scores FILE   also keeps what each ride's candidates got, so that misses can be looked at without training
 *
 * Data: ../shared/labelled-rides (real and simulated, where present), slips and look-alikes put into their healthy
 * rides with seeds from 1 on, generated rides of sample-rides/generator from seed 1000 on. What can be observed is
 * learned from slips put in with other seeds and found by detectors that had not seen the ride. Every random choice
 * is seeded: the same data give the same models.
 */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ASKED_FROM } from '../../../src/lib/slip/model/firstSet';
import { joinedLogOdds } from '../../../src/lib/slip/model/joinedLogOdds';
import { packNets } from '../../../src/lib/slip/model/netModel';
import { LEAST_LOG_ODDS } from '../../../src/lib/slip/reportLimits';
import { causeTable } from './causeTable';
import { calibrateStrength, SLIPS_PER_THOUSAND_KM, type Reported } from './calibrateStrength';
import { keepStrongest } from './keepStrongest';
import { chooseLimit, judgeObserved, promiseTable, type JudgedTrial } from './judgeObserved';
import { FOLDS, judgedIn } from './folds';
import { learnApart, type LearnedFold, type LearnedOne } from './learnApart';
import { learnObserved } from './learnObserved';
import { meanOfSets } from './learnScorer';
import { FALSE_RATES, meanRecall } from './meanRecall';
import { addRide, emptyScore } from './scoreEvents';
import { generatedTrials, LEAST_TRIED_DEG } from './generatedTrials';
import { keepScores } from './keepScores';
import { keptRows } from './keptRows';
import { OPTIONS, PLAN } from './plan';
import { trainingRides, type TrainingPart } from './trainingRides';

const CAUSE_WORDS = [
	'### Slips of 60 crank degrees and more that were missed, and false alarms on rides without slip, by cause',
	'',
	'At the limit in use, rides and devices left out; the first cause that fits (tests/bench/training/missCause.ts).'
];
const OBSERVED_TREES = 60;
/** Of the slips of 90 degrees and more on observed stretches, so many must be found, on simulated and on real rides. */
const WANTED_FOUND = 0.9;
const PROMISE_WORDS = [
	'### Observed distance and promise, rides and devices left out',
	'',
	'Share of the distance observed, and of the slips of 90 crank degrees and more there, how many were found. Probes',
	'are slips put anywhere under load; generated rides are of many devices that no scorer was taught.'
];
/** Strength is calibrated on more than what is reported: below the limit there are more false alarms to learn from. */
const CALIBRATED_FROM = 1;

interface Scored {
	readonly part: TrainingPart;
	readonly logOdds: number[];
	readonly fold: number;
}

async function main() {
	const judgeOnly = process.argv.includes('--judge');
	const scratch = mkdtempSync(join(tmpdir(), 'slip-ledger-training-'));
	const rows = argument('--rows') ?? join(scratch, 'rows');
	const kept = argument('--kept') ?? join(scratch, 'kept');
	mkdirSync(kept, { recursive: true });
	const parts = await keptRows(rows, () => trainingRides(PLAN));
	console.log(`${parts.length} rides, ${parts.reduce((sum, part) => sum + part.rows.length, 0)} candidates`);
	const learned = await learnApart(rows, kept, !judgeOnly);
	const scored = scoreLeftOut(parts, learned);
	if (!judgeOnly) writeScorer(learned[FOLDS.length], scored);
	const trials = [...scored.flatMap(trialsOf), ...(await generatedTrials(kept))];
	const labelled = scored.filter(({ part }) => part.asRecorded);
	const promises = judgeObserved(trials, labelled, OBSERVED_TREES, OPTIONS.seed);
	const observedFrom = chooseLimit(promises, WANTED_FOUND);
	const figures = [
		...recallTable(scored),
		'',
		...meanLines(labelled),
		'',
		...CAUSE_WORDS,
		'',
		...causeTable(scored, LEAST_LOG_ODDS),
		'',
		...PROMISE_WORDS,
		'',
		...promiseTable(promises, observedFrom)
	];
	const keepIn = argument('--scores');
	if (keepIn) keepScores(keepIn, labelled);
	console.log(figures.join('\n'));
	rmSync(scratch, { recursive: true });
	if (judgeOnly) return;
	writeFileSync(new URL('./left-out-figures.md', import.meta.url).pathname, `${figures.join('\n')}\n`);
	write('observed', learnObserved(trials, OBSERVED_TREES, OPTIONS.seed, observedFrom));
}

/** Before what can be observed is learned, since generated rides are tried with the scorer that lies there. */
function writeScorer({ trees, nets }: LearnedFold, scored: readonly Scored[]) {
	write('net', packNets(nets.map(({ model }) => model)));
	const scorer = meanOfSets(trees.map(({ model }) => model));
	write('scorer', { ...scorer, strength: calibrateStrength(reportedEvents(scored)) });
}

/** What follows a word of the command line. */
function argument(word: string): string | undefined {
	const at = process.argv.indexOf(word);
	return at > 0 ? process.argv[at + 1] : undefined;
}

function write(name: string, model: object) {
	const path = new URL(`../../../src/lib/slip/model/${name}.json`, import.meta.url).pathname;
	writeFileSync(path, JSON.stringify(model));
	console.log(`wrote ${path}`);
}

/** Scores every ride as recorded, and every probe, by trees and nets that never saw the ride or its device. */
function scoreLeftOut(parts: readonly TrainingPart[], learned: readonly LearnedFold[]): Scored[] {
	return FOLDS.flatMap((_, fold) => {
		const { trees, nets } = learned[fold];
		const meanOf = (all: readonly LearnedOne<unknown>[], part: number, i: number) =>
			all.reduce((sum, { logOdds }) => sum + logOdds[part][i], 0) / all.length;
		return judgedIn(parts, fold).map((part, at) => ({
			part,
			logOdds: part.rows.map((_, i) => {
				const first = trees[0].logOdds[at][i];
				return first < ASKED_FROM ? first : joinedLogOdds(meanOf(trees, at, i), meanOf(nets, at, i));
			}),
			fold
		}));
	});
}

/** Each slip that could show as a trial: was it found at the limit that the tool uses? */
function trialsOf({ part, logOdds, fold }: Scored): JudgedTrial[] {
	const score = emptyScore();
	const slips = part.events.filter((event) => event.kind !== 'chain skip');
	const { missed } = addRide(score, slips, part.km, keepStrongest(part, logOdds, LEAST_LOG_ODDS), [], 0, 0);
	const labelled = part.asRecorded;
	return part.events.flatMap((event, i) => {
		const features = part.observation.atEvents[i];
		if (!features || event.kind === 'chain skip' || event.crankDeg < LEAST_TRIED_DEG) return [];
		const found = !missed.includes(event);
		return [{ features, crankDeg: event.crankDeg, found, weight: 1, fold, origin: part.origin, labelled }];
	});
}

/** Events that would be reported, slips weighted to the stated prevalence on the distance of the healthy rides. */
function reportedEvents(scored: readonly Scored[]): Reported[] {
	const out: Reported[] = [];
	for (const origin of ['simulated', 'real']) {
		const rides = scored.filter(({ part }) => part.origin === origin && part.asRecorded);
		const slipping = rides.filter(({ part }) => part.events.some((event) => event.kind !== 'chain skip'));
		const healthyKm = rides.reduce((sum, ride) => sum + (slipping.includes(ride) ? 0 : ride.part.km), 0);
		const slips = slipping.flatMap(({ part }) => part.events.filter((event) => event.crankDeg >= 60)).length;
		for (const ride of rides) {
			const { part, logOdds } = ride;
			const found = keepStrongest(part, logOdds, CALIBRATED_FROM);
			const { wrong } = addRide(emptyScore(), part.events, part.km, found, [], 0, 0);
			for (const event of found) {
				const slip = !wrong.includes(event);
				if (slip !== slipping.includes(ride)) continue;
				const weight = slip ? (SLIPS_PER_THOUSAND_KM * healthyKm) / 1000 / slips : 1;
				out.push({ logOdds: event.strength, slip, weight });
			}
		}
	}
	return out;
}

/** What two trainings are compared by. */
function meanLines(labelled: readonly Scored[]): string[] {
	const figures = ['simulated', 'real'].map((origin) => {
		const share = meanRecall(labelled.filter(({ part }) => part.origin === origin));
		return `${origin} ${(100 * share).toFixed(1)} %`;
	});
	return [
		`Slips of 60 degrees and more found, mean over ${FALSE_RATES.join(', ')} false per 1000 km: ${figures.join(', ')}.`
	];
}

/** Recall and false alarms by rides left out, at a row of limits; the limit in use is marked. */
function recallTable(scored: readonly Scored[]): string[] {
	const rows = [
		'### Labelled rides, each judged by a detector that saw neither it nor its device',
		'',
		'Found by overrun 0-30 / 30-60 / 60-120 / 120 and more crank degrees, false per 1000 km on rides without slip.',
		'',
		'| limit | simulated found % | simulated false | real found % | real false |',
		'|---|---|---|---|---|'
	];
	for (let least = 0; least <= 3.5; least += 0.25) {
		let line = `| ${least.toFixed(2)}${least === LEAST_LOG_ODDS ? ' (in use)' : ''} |`;
		for (const origin of ['simulated', 'real']) {
			const score = emptyScore();
			for (const { part, logOdds } of scored) {
				if (part.origin !== origin || !part.asRecorded) continue;
				addRide(score, part.events, part.km, keepStrongest(part, logOdds, least), [], 0, 0);
			}
			const recall = score.hit.map((hit, i) => ((100 * hit) / score.all[i]).toFixed(0)).join('/');
			line += ` ${recall} | ${score.falseHealthy} = ${((1000 * score.falseHealthy) / score.kmHealthy).toFixed(1)} |`;
		}
		rows.push(line);
	}
	return rows;
}

await main();
