/**
 * Learns the scorer of candidates and writes it to src/lib/slip/model/scorer.json.
 *
 *   npx tsx tests/bench/training/train.ts            learn from everything and write the model
 *   npx tsx tests/bench/training/train.ts --judge    judge by rides left out, write nothing
 *
 * Data: ../shared/labelled-rides (real and simulated, where present), slips and look-alikes put into their healthy
 * rides with seeds from 1 on, generated rides of sample-rides/generator from seed 1000 on. Every random choice is
 * seeded: the same data give the same model.
 */
import { writeFileSync } from 'node:fs';
import { treeLogOdds, type TreeModel } from '../../../src/lib/slip/model/treeModel';
import { learnScorer } from './learnScorer';
import { addRide, emptyScore } from './scoreEvents';
import { keepStrongest } from './keepStrongest';
import { trainingRides, type TrainingPart } from './trainingRides';

const number = (name: string, otherwise: number) => Number(process.env[name] ?? otherwise);
const PLAN = {
	slipCopies: number('SLIP_COPIES', 9),
	artefactCopies: number('ARTEFACT_COPIES', 3),
	generated: number('GENERATED', 40),
	firstSeed: 1000
};
const OPTIONS = {
	trees: number('TREES', 240),
	depth: number('DEPTH', 5),
	learningRate: number('RATE', 0.08),
	seed: number('SEED', 7),
	realWeight: number('REAL_WEIGHT', 3),
	largeWeight: number('LARGE_WEIGHT', 1.5)
};

/** Rides that are left out together: a device or a rider must not be in both. */
const FOLDS = [
	['real/r01', 'simulated/a01', 'simulated/a04', 'simulated/a08'],
	['real/r06', 'real/r07', 'simulated/a02', 'simulated/a05', 'simulated/a12'],
	['real/r08', 'real/r12', 'simulated/a03', 'simulated/a06', 'simulated/a10'],
	['real/r09', 'simulated/a07', 'simulated/a09', 'simulated/a11'],
	['real/r10', 'real/r11']
];

async function main() {
	const parts = await trainingRides(PLAN);
	console.log(`${parts.length} rides, ${parts.reduce((sum, part) => sum + part.rows.length, 0)} candidates`);
	if (process.argv.includes('--judge')) return judge(parts);
	const model = learnScorer(parts, OPTIONS);
	const path = new URL('../../../src/lib/slip/model/scorer.json', import.meta.url).pathname;
	writeFileSync(path, JSON.stringify(model));
	console.log(`${path}: ${model.trees.length} trees`);
}

function judge(parts: readonly TrainingPart[]) {
	const scored: { part: TrainingPart; logOdds: number[] }[] = [];
	for (const fold of FOLDS) {
		const started = performance.now();
		const model: TreeModel = learnScorer(
			parts.filter((part) => !fold.includes(part.group)),
			OPTIONS
		);
		for (const part of parts) {
			if (!part.asRecorded || !fold.includes(part.group)) continue;
			scored.push({ part, logOdds: part.rows.map((row) => treeLogOdds(model, row)) });
		}
		console.log(`${fold[0]} left out, ${((performance.now() - started) / 1000).toFixed(0)} s`);
	}
	writeFileSync(
		process.env.SCORED ?? '/tmp/detection/scored.json',
		JSON.stringify(scored.map(({ part, logOdds }) => ({ ...part, rows: undefined, logOdds })))
	);
	for (let least = -0.5; least <= 3.5; least += 0.25) {
		let line = `log odds ${least.toFixed(2)}`;
		for (const origin of ['simulated', 'real']) {
			const score = emptyScore();
			for (const { part, logOdds } of scored) {
				if (part.origin === origin)
					addRide(score, part.events, part.km, keepStrongest(part, logOdds, least), [], 0, 0);
			}
			const recall = score.hit.map((hit, i) => ((100 * hit) / score.all[i]).toFixed(0)).join('/');
			line += ` | ${origin} ${recall}, false ${score.falseHealthy} = ${((1000 * score.falseHealthy) / score.kmHealthy).toFixed(1)} (all ${((1000 * score.falseAll) / score.kmAll).toFixed(1)})`;
		}
		console.log(line);
	}
}

await main();
