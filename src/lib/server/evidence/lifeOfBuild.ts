import { clusteredCount } from '$lib/reliability/clusteredCount';
import { meanCumulativeFunction } from '$lib/reliability/meanCumulativeFunction';
import { trendOfRate } from '$lib/reliability/trendOfRate';
import { CONFIDENCE } from '../rates/countView';
import type { Counting } from './binnedRates';
import { unwatchedGaps } from './unwatchedGaps';
import type { BuildEvidence } from './buildEvidence';
import { unitsOf } from './buildRates';
import { wheelHistories } from './wheelHistories';

/** How the slips of a build go on with distance. */
export interface LifeOfBuild {
	/** mean number of slips of one wheel by a distance, with limits */
	readonly curve: readonly {
		readonly atM: number;
		readonly value: number;
		readonly lower: number;
		readonly upper: number;
	}[];
	/** ages at which no wheel was watched, where they are long enough to be drawn; metres */
	readonly gaps: readonly { readonly fromM: number; readonly toM: number }[];
	/** how many wheels were observed at all */
	readonly wheels: number;
	readonly trend: TrendView;
}

export interface TrendView {
	readonly verdict: 'worse' | 'better' | 'not shown' | 'too few to say';
	readonly slips: number;
	/** growth of the rate with distance: 1 = steady; null = cannot be fitted */
	readonly shape: number | null;
	readonly shapeLower: number | null;
	/** null = not bounded */
	readonly shapeUpper: number | null;
	/** two-sided p-values of "the rate is constant"; null = cannot be given */
	readonly pLaplace: number | null;
	readonly pChiSquare: number | null;
	readonly confidence: number;
}

/** The curve of mean slips over distance and the trend of the rate, observed distance only. */
export function lifeOfBuild(evidence: BuildEvidence, counting: Counting): LifeOfBuild {
	const histories = wheelHistories(evidence, counting);
	// without it a burst in a late ride reads as a build that gets worse
	const { usedDispersion } = clusteredCount(unitsOf(evidence.rides, counting));
	const curve = meanCumulativeFunction(histories, CONFIDENCE);
	return {
		curve: curve.steps.map(({ age, mean, lower, upper }) => ({ atM: age, value: mean, lower, upper })),
		gaps: unwatchedGaps(
			histories.flatMap(({ windows }) => windows),
			Math.max(0, ...evidence.wheels.map(({ endM }) => endM))
		),
		wheels: histories.length,
		trend: trendView(trendOfRate(histories, CONFIDENCE, usedDispersion))
	};
}

const VERDICTS = {
	rising: 'worse',
	falling: 'better',
	notShown: 'not shown',
	tooFew: 'too few to say'
} as const;

function trendView({ verdict, events, fit, laplace, chiSquare }: ReturnType<typeof trendOfRate>): TrendView {
	return {
		verdict: VERDICTS[verdict],
		slips: events,
		shape: fit && fit.shape,
		shapeLower: fit && fit.shapeLower,
		shapeUpper: fit && Number.isFinite(fit.shapeUpper) ? fit.shapeUpper : null,
		pLaplace: laplace && laplace.pTwoSided,
		pChiSquare: chiSquare && chiSquare.pTwoSided,
		confidence: CONFIDENCE
	};
}
