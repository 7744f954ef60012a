import { random } from '../../../sample-rides/generator/random';
import { treeLogOdds } from '../../../src/lib/slip/model/treeModel';
import { OBSERVATION_FEATURES } from '../../../src/lib/slip/observationFeatures';
import { sizeTerm, type ObservedModel } from '../../../src/lib/slip/model/observedModel';
import { growTrees } from './growTrees';

/** One slip whose place and size are known, and whether a detector that never saw the ride found it. */
export interface Trial {
	readonly features: Float64Array;
	readonly crankDeg: number;
	readonly found: boolean;
	readonly weight: number;
}

const RISING = ['power around W', 'power around of usual', 'share of pressing around'];
const FALLING = [
	'ratio noise around',
	'power noise around',
	'step of ratio across',
	'scatter of ratio before',
	'shifts recorded around',
	'records missing around',
	'power follows slowly',
	'cadence follows slowly',
	'ratio scatter of the ride',
	'distance of ratio from a gear',
	'power scatter of the ride'
];

/** Fits P(found): trees on the place, one slope on the size, in turns; from `leastLogOdds` on a second is observed. */
export function learnObserved(
	trials: readonly Trial[],
	trees: number,
	seed: number,
	leastLogOdds: number
): ObservedModel {
	const monotone = new Int8Array(OBSERVATION_FEATURES.length);
	for (const name of RISING) monotone[OBSERVATION_FEATURES.indexOf(name as never)] = 1;
	for (const name of FALLING) monotone[OBSERVATION_FEATURES.indexOf(name as never)] = -1;
	let slope = 1.5;
	let model: ReturnType<typeof growTrees> | undefined;
	for (let turn = 0; turn < 3; turn++) {
		model = growTrees(
			trials.map((trial) => trial.features),
			Float64Array.from(trials, (trial) => (trial.found ? 1 : 0)),
			Float64Array.from(trials, (trial) => trial.weight),
			{
				trees,
				depth: 3,
				learningRate: 0.1,
				leastHessian: 8,
				shrinkage: 5,
				rowShare: 1,
				columnShare: 0.6,
				monotone,
				names: OBSERVATION_FEATURES,
				offset: Float64Array.from(trials, (trial) => slope * sizeTerm(trial.crankDeg))
			},
			random(seed)
		);
		slope = bestSlope(
			trials,
			trials.map((trial) => treeLogOdds(model!, trial.features)),
			slope
		);
	}
	return { ...model!, sizeSlope: Number(slope.toFixed(3)), leastLogOdds };
}

/** Newton's method on the log likelihood of the slope alone. */
function bestSlope(trials: readonly Trial[], logOdds: readonly number[], start: number): number {
	let slope = start;
	for (let turn = 0; turn < 8; turn++) {
		let gradient = 0;
		let hessian = 1e-9;
		trials.forEach((trial, i) => {
			const size = sizeTerm(trial.crankDeg);
			const p = 1 / (1 + Math.exp(-(logOdds[i] + slope * size)));
			gradient += trial.weight * size * ((trial.found ? 1 : 0) - p);
			hessian += trial.weight * size * size * p * (1 - p);
		});
		slope += gradient / hessian;
	}
	return slope;
}
