/** A value above 0 with its limits; `upper` may be Infinity. */
export interface PositiveLimits {
	readonly value: number;
	readonly lower: number;
	readonly upper: number;
}

/**
 * An estimate times a factor that was itself estimated, with limits for the product: distances from value to limit
 * are added as squares on the logarithm, each limit by itself. Of a value of 0 only an upper limit is known: it is
 * multiplied by the upper limit of the factor, which is wider.
 *
 * @param estimate value >= 0 with limits; lower may be 0, upper Infinity
 * @param factor > 0 with limits of the same confidence, made apart from the estimate
 * @returns NaN where the value is NaN
 * @example limitsTimesFactor({ value: 2, lower: 1, upper: 4 }, { value: 1.5, lower: 1.5, upper: 1.5 })
 * // { value: 3, lower: 1.5, upper: 6 }
 * Source: Zou and Donner 2008, Statistics in Medicine 27:1693 (variance estimates recovery), on the logarithm.
 */
export function limitsTimesFactor(estimate: PositiveLimits, factor: PositiveLimits): PositiveLimits {
	if (!(factor.value > 0 && factor.lower > 0 && factor.lower <= factor.value && factor.upper >= factor.value))
		throw new RangeError(`factor must be above 0 and within its limits; it is ${factor.value}`);
	const { value, lower, upper } = estimate;
	if (!(value > 0 && value < Infinity))
		return { value: value * factor.value, lower: lower * factor.lower, upper: upper * factor.upper };
	const far = (a: number, b: number) => Math.exp(Math.hypot(Math.log(a), Math.log(b)));
	const product = value * factor.value;
	return {
		value: product,
		lower: lower > 0 ? product / far(value / lower, factor.value / factor.lower) : 0,
		upper: upper < Infinity ? product * far(upper / value, factor.upper / factor.value) : Infinity
	};
}
