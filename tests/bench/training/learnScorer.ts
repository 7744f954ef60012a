import { random } from '../../../sample-rides/generator/random';
import { FEATURE_NAMES } from '../../../src/lib/slip/candidateFeatures';
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
	'power lost at peak in power noise'
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
	'local noise'
];

/** A slip smaller than this is not taught: at 1 Hz it cannot be told from what roads and sensors do. */
const LEAST_TAUGHT_DEG = 38;

export interface ScorerOptions {
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

/** Grows the trees that score candidates from the parts that are given. */
export function learnScorer(parts: readonly TrainingPart[], options: ScorerOptions): TreeModel {
	const rows: Float64Array[] = [];
	const target: number[] = [];
	const weight: number[] = [];
	for (const part of parts) {
		part.rows.forEach((row, i) => {
			const was = part.truth[i];
			if (was === -2) return;
			const crankDeg = was >= 0 ? part.events[was].crankDeg : 0;
			if (was >= 0 && crankDeg < LEAST_TAUGHT_DEG) return;
			rows.push(row);
			target.push(was >= 0 ? 1 : 0);
			if (was >= 0) {
				const size = crankDeg < 55 ? 0.5 : crankDeg > 100 ? options.largeWeight : 1;
				weight.push(
					size *
						(part.origin === 'generated'
							? options.generatedWeight
							: part.origin === 'simulated'
								? options.simulatedWeight
								: 1)
				);
			} else
				weight.push(
					part.origin === 'real' && part.asRecorded
						? options.realWeight
						: part.lookAlikes
							? options.lookAlikeWeight
							: 1
				);
		});
	}
	const monotone = new Int8Array(FEATURE_NAMES.length);
	for (const name of RISING) monotone[indexOf(name)] = 1;
	for (const name of FALLING) monotone[indexOf(name)] = -1;
	return growTrees(
		rows,
		Float64Array.from(target),
		Float64Array.from(weight),
		{
			...options,
			leastHessian: 1,
			shrinkage: 3,
			rowShare: 0.12,
			columnShare: 0.4,
			monotone,
			names: FEATURE_NAMES
		},
		random(options.seed)
	);
}

function indexOf(name: string): number {
	const index = FEATURE_NAMES.indexOf(name);
	if (index < 0) throw new Error(`no feature is called ${name}`);
	return index;
}
