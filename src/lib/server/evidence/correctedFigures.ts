import { limitsTimesFactor, type PositiveLimits } from '$lib/reliability/limitsTimesFactor';
import type { RateView } from '../views';
import type { DetectionFactor } from './detectionFactor';

/** A figure with limits; null = not known, or without bound. */
export interface CorrectedFigure {
	readonly value: number | null;
	readonly lower: number;
	readonly upper: number | null;
}

/** A rate per 100 observed km as it would be had every slip been found. */
export function correctedRate(rate: RateView, factor: DetectionFactor): CorrectedFigure {
	return figureOf(
		limitsTimesFactor(
			{
				value: rate.ratePerHundredKm ?? NaN,
				lower: rate.lowerPerHundredKm,
				upper: rate.upperPerHundredKm ?? Infinity
			},
			{ value: factor.factor, lower: factor.lower, upper: factor.upper }
		)
	);
}

/** A ratio of two builds, each corrected by its own factor. */
export function correctedRatio(
	ratio: { readonly ratio: number | null; readonly lower: number; readonly upper: number | null },
	build: DetectionFactor,
	reference: DetectionFactor
): CorrectedFigure {
	const both = limitsTimesFactor(
		{ value: build.factor, lower: build.lower, upper: build.upper },
		{ value: 1 / reference.factor, lower: 1 / reference.upper, upper: 1 / reference.lower }
	);
	return figureOf(
		limitsTimesFactor({ value: ratio.ratio ?? NaN, lower: ratio.lower, upper: ratio.upper ?? Infinity }, both)
	);
}

function figureOf({ value, lower, upper }: PositiveLimits): CorrectedFigure {
	return {
		value: Number.isFinite(value) ? value : null,
		lower,
		upper: Number.isFinite(upper) ? upper : null
	};
}
