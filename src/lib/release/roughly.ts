/**
 * A distance that is still to be ridden, upwards to two digits: it hangs on what is still to come and is known no better.
 *
 * @param metres more than 0
 * @example roughly(1_494_000) // 1_500_000
 */
export function roughly(metres: number): number {
	const unit = 10 ** Math.max(0, Math.floor(Math.log10(metres)) - 1);
	return Math.ceil(metres / unit) * unit;
}
