import type { Formats } from './formats';
import { countedNoun } from './countedNoun';
import { ifSlips } from './ifSlips';

/** A trend of the rate with distance; the server's view fits. */
export interface TrendFigures {
	readonly verdict: 'worse' | 'better' | 'not shown' | 'too few to say';
	readonly slips: number;
	/** growth exponent: 1 = steady; null = cannot be fitted */
	readonly shape: number | null;
	readonly shapeLower: number | null;
	/** null = not bounded */
	readonly shapeUpper: number | null;
	readonly pLaplace: number | null;
	readonly pChiSquare: number | null;
	readonly confidence: number;
}

/**
 * Whether a build gets worse with distance, in a sentence with what it rests on.
 *
 * @param unreviewed how many of the counted events nobody has reviewed: a trend of those is no more than a condition
 */
export function trendWords(trend: TrendFigures, formats: Formats, unreviewed = 0): string {
	const { verdict, slips, shape, shapeLower, shapeUpper, confidence } = trend;
	if (verdict === 'too few to say' || shape === null)
		return `${slips === 0 ? 'No slip counts' : `Only ${formats.number(slips)} ${countedNoun(slips, unreviewed)} ${slips === 1 ? 'counts' : 'count'}`}: too few to say whether the rate changes with distance.`;
	const limits = `${formats.share(confidence)} limits ${formats.figure(shapeLower ?? 0)} to ${shapeUpper === null ? 'no limit' : formats.figure(shapeUpper)}`;
	const figures = `With the distance doubled, the count is ${formats.figure(2 ** shape)} times as large (2 times would be steady; growth exponent ${formats.figure(shape)}, ${limits}).`;
	const condition = ifSlips(unreviewed, formats);
	switch (verdict) {
		case 'worse':
			return `Gets worse with distance${condition}. ${figures}`;
		case 'better':
			return `Gets better with distance${condition}. ${figures}`;
		default:
			return `The rides show neither worse nor better with distance, which does not prove it steady. ${figures}`;
	}
}

/** The two classical tests beside it, for whoever wants to see them. */
export function trendTestWords({ pLaplace, pChiSquare }: TrendFigures, formats: Formats): string {
	const p = (value: number | null) =>
		value === null ? 'cannot be given' : value < 0.001 ? 'below 0.001' : formats.number(value, 3);
	return `p\u00a0values of "the rate does not change": ${p(pLaplace)} (Laplace), ${p(pChiSquare)} (chi-square).`;
}
