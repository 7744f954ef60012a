/**
 * The scale of speed close up, where it shows whether the wheel changed: only the range in use, at least 4 km/h.
 *
 * @param shown lowest and highest values in view, km/h; NaN = not known
 * @example speedDomain({ low: [21], high: [23] }) // [19, 25]
 */
export function speedDomain({
	low,
	high
}: {
	readonly low: ArrayLike<number>;
	readonly high: ArrayLike<number>;
}): [number, number] {
	let [least, most] = [Infinity, -Infinity];
	for (let i = 0; i < low.length; i++) {
		if (low[i] < least) least = low[i];
		if (high[i] > most) most = high[i];
	}
	if (least > most) return [0, 10];
	return [Math.max(0, Math.floor(least - 2)), Math.ceil(most + 2)];
}
