import { random } from '../../../sample-rides/generator/random';
import { FEATURE_NAMES } from '../../../src/lib/slip/candidateFeatures';
import type { ScorerModel } from '../../../src/lib/slip/model/firstSet';
import type { TreeModel } from '../../../src/lib/slip/model/treeModel';
import { growTrees } from './growTrees';
import type { TrainingPart } from './trainingRides';

/** What physics says of a slip: more of these never makes one less likely ... */
const RISING = [
	'deg at peak',
	'careful deg in local noise',
	'deg against cadence around',
	'power lost in seconds',
	'deg against recorded ratios',
	'deg against followed gears',
	'distance of peak from another gear',
	'deepest speed dip',
	'dip at peak',
	'dip at peak, clock of the file',
	'gears alone against slip',
	'deg beyond gears',
	'power lost in power noise',
	'power lost at peak in power noise',
	'log odds of the slip state',
	'deg at peak in dips of the ride',
	'deg of a peak of one second',
	'deg of a peak of two seconds',
	'deg of a peak of three seconds',
	'power dip at peak',
	'deepest power dip near',
	'deepest power dip in power noise',
	'torque dip at peak',
	'deepest torque dip near',
	'deg against every recorded ratio near',
	'peak second against recorded ratios near'
];
/** ... and more of these never makes one more likely. */
const FALLING = [
	'least power of before',
	'second least power of before',
	'least power against after',
	'torque kept at peak',
	'power of before at 0 s',
	'power of before at 1 s',
	'power at peak against seconds beside',
	'recorded shifts near',
	'seconds at peak ratio',
	'missing records near',
	'local noise',
	'ring changed at peak'
];

/** A slip smaller than this is not taught: at 1 Hz it cannot be told from what roads and sensors do. */
const LEAST_TAUGHT_DEG = 38;

export interface ScorerOptions {
	/** sets of trees grown with seeds of their own; the scorer is their mean, which scatters less */
	readonly sets: number;
	/** nets whose mean stands beside the trees */
	readonly nets: number;
	/** trees a set */
	readonly trees: number;
	readonly depth: number;
	readonly learningRate: number;
	readonly seed: number;
	/** weight of a candidate in a real ride as recorded: there false alarms cost most */
	readonly realWeight: number;
	readonly largeWeight: number;
	readonly generatedWeight: number;
	readonly simulatedWeight: number;
	/** weight of a candidate in a copy with look-alikes: they are put in far more often than they happen */
	readonly lookAlikeWeight: number;
}

/** How much a candidate counts; 0 = not taught. */
export function rowWeight(part: TrainingPart, i: number, options: ScorerOptions): number {
	const was = part.truth[i];
	if (was === -2) return 0;
	if (was < 0) {
		if (part.origin === 'real' && part.asRecorded) return options.realWeight;
		return part.lookAlikes ? options.lookAlikeWeight : 1;
	}
	const { crankDeg } = part.events[was];
	if (crankDeg < LEAST_TAUGHT_DEG) return 0;
	const size = crankDeg < 55 ? 0.5 : crankDeg > 100 ? options.largeWeight : 1;
	if (part.origin === 'generated') return size * options.generatedWeight;
	return part.origin === 'simulated' ? size * options.simulatedWeight : size;
}

/** What is taught of the parts that are given, in their order: target 1 = slip, 0 = none. */
export function taughtRows<Row>(
	parts: readonly TrainingPart[],
	rowsOf: (part: TrainingPart) => readonly Row[],
	options: ScorerOptions
): { rows: Row[]; target: number[]; weight: number[] } {
	const rows: Row[] = [];
	const target: number[] = [];
	const weight: number[] = [];
	for (const part of parts) {
		rowsOf(part).forEach((row, i) => {
			const own = rowWeight(part, i, options);
			if (own === 0) return;
			rows.push(row);
			target.push(part.truth[i] >= 0 ? 1 : 0);
			weight.push(own);
		});
	}
	return { rows, target, weight };
}

/** Grows one set of the trees that score candidates, the number-th, from the parts that are given. */
export function growSet(parts: readonly TrainingPart[], options: ScorerOptions, number: number): TreeModel {
	const { rows, target, weight } = taughtRows(parts, (part) => part.rows, options);
	return growTrees(
		rows,
		Float64Array.from(target),
		Float64Array.from(weight),
		{
			...options,
			leastHessian: 3,
			shrinkage: 5,
			rowShare: 0.12,
			columnShare: 0.3,
			monotone: MONOTONE,
			names: FEATURE_NAMES
		},
		random(options.seed + number)
	);
}

/** One model that gives the mean of several: leaves and bias divided by their number. */
export function meanOfSets(models: readonly TreeModel[]): ScorerModel {
	const share = (value: number) => Number((value / models.length).toPrecision(4));
	return {
		names: models[0].names,
		sets: models.length,
		bias: models.reduce((sum, model) => sum + model.bias, 0) / models.length,
		trees: models.flatMap(({ trees }) =>
			trees.map((tree) => tree.map((node) => (node.length === 1 ? [share(node[0])] : node)))
		)
	};
}

function indexOf(name: string): number {
	const index = FEATURE_NAMES.indexOf(name);
	if (index < 0) throw new Error(`no feature is called ${name}`);
	return index;
}

/** By feature: 1 = rising, -1 = falling, 0 = free. */
export const MONOTONE = new Int8Array(FEATURE_NAMES.length);
for (const name of RISING) MONOTONE[indexOf(name)] = 1;
for (const name of FALLING) MONOTONE[indexOf(name)] = -1;
