import type { TrendView } from '$lib/server';
import type { Formats } from '$lib/ui/formats';

/** Whether a build gets worse with distance, in a sentence with what it rests on. */
export function trendWords(trend: TrendView, formats: Formats): string {
	const { verdict, slips, shape, shapeLower, shapeUpper, confidence } = trend;
	if (verdict === 'too few to say' || shape === null)
		return `${slips === 0 ? 'No slip counts' : `Only ${formats.number(slips)} ${slips === 1 ? 'slip counts' : 'slips count'}`}: too few to say whether the rate changes with distance.`;
	const limits = `${formats.share(confidence)} limits ${formats.figure(shapeLower ?? 0)} to ${shapeUpper === null ? 'no limit' : formats.figure(shapeUpper)}`;
	const figures = `With the distance doubled, slips grow ${formats.figure(2 ** shape)}-fold (2-fold would be steady; growth exponent ${formats.figure(shape)}, ${limits}).`;
	switch (verdict) {
		case 'worse':
			return `Gets worse with distance. ${figures}`;
		case 'better':
			return `Gets better with distance. ${figures}`;
		default:
			return `The rides show neither worse nor better with distance, which does not prove it steady. ${figures}`;
	}
}

/** The two classical tests beside it, for whoever wants to see them. */
export function trendTestWords({ pLaplace, pChiSquare }: TrendView, formats: Formats): string {
	const p = (value: number | null) =>
		value === null ? 'cannot be given' : value < 0.001 ? 'below 0.001' : formats.number(value, 3);
	return `p-values of "the rate does not change": ${p(pLaplace)} (Laplace), ${p(pChiSquare)} (chi-square).`;
}
