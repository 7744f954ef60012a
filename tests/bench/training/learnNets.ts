import { learnNet } from './learnNet';
import { rowWeight, type ScorerOptions } from './learnScorer';
import type { TrainingPart } from './trainingRides';

/** Learns the nets that read windows, from the same candidates with the same weights as the trees. */
export function learnNets(
	parts: readonly TrainingPart[],
	options: ScorerOptions,
	say?: (line: string) => void
): Float32Array[] {
	const windows: Float32Array[] = [];
	const target: number[] = [];
	const weight: number[] = [];
	for (const part of parts) {
		part.windows.forEach((flat, i) => {
			const own = rowWeight(part, i, options);
			if (own === 0) return;
			windows.push(flat);
			target.push(part.truth[i] >= 0 ? 1 : 0);
			weight.push(own);
		});
	}
	return Array.from({ length: options.nets }, (_, k) =>
		learnNet({ windows, target, weight }, 100 * options.seed + k, say)
	);
}
