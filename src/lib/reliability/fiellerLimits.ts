/** Two estimates that depend on each other: their values, variances and covariance. */
export interface TwoEstimates {
	readonly numerator: number;
	readonly denominator: number;
	readonly numeratorVariance: number;
	readonly denominatorVariance: number;
	readonly covariance: number;
}

/**
 * Limits of a ratio of two estimates.
 * `between`: the ratio lies between the limits. `outside`: it lies at or below `lower` or at or above
 * `upper`, because the denominator's sign is not established. `anywhere`: nothing can be said.
 */
export interface RatioLimits {
	readonly kind: 'between' | 'outside' | 'anywhere';
	readonly lower: number;
	readonly upper: number;
}

/**
 * The set of ratios that the two estimates do not speak against (Fieller's interval). Unlike limits from a
 * standard error it may be unbounded, and then says so.
 *
 * @param of the estimates; a denominator of exactly 0 is allowed
 * @param quantile how many standard errors may lie between (Student's or the normal quantile), > 0
 * @returns limits; -Infinity and Infinity where nothing can be said
 * @example fiellerLimits({ numerator: 6, denominator: 2, numeratorVariance: 0.04, denominatorVariance: 0.01,
 *   covariance: 0 }, 2) // 2.667 to 3.394, between
 * Source: Fieller 1954, J. R. Statist. Soc. B 16:175 (citation from memory); derivation: the quadratic
 * (a - r b)^2 = q^2 (Vaa - 2 r Vab + r^2 Vbb) solved for r.
 */
export function fiellerLimits(of: TwoEstimates, quantile: number): RatioLimits {
	const q2 = quantile * quantile;
	const square = of.denominator ** 2 - q2 * of.denominatorVariance;
	const half = of.numerator * of.denominator - q2 * of.covariance;
	const constant = of.numerator ** 2 - q2 * of.numeratorVariance;
	const discriminant = half * half - square * constant;
	if (discriminant < 0 || square === 0) return { kind: 'anywhere', lower: -Infinity, upper: Infinity };
	// the root without cancellation first, the other from the product of both
	const large = half + (half >= 0 ? 1 : -1) * Math.sqrt(discriminant);
	const roots = large === 0 ? [0, 0] : [large / square, constant / large];
	return {
		kind: square > 0 ? 'between' : 'outside',
		lower: Math.min(...roots),
		upper: Math.max(...roots)
	};
}
