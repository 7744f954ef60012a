/** Lowest and highest values in view; NaN = not known. */
export interface ValueRange {
	readonly low: ArrayLike<number>;
	readonly high: ArrayLike<number>;
}

/** Multiples of a step that hold all values with a little room; null where nothing is known. */
export function heldIn({ low, high }: ValueRange, step: number, room: number): [number, number] | null {
	let [least, most] = [Infinity, -Infinity];
	for (let i = 0; i < low.length; i++) {
		if (low[i] < least) least = low[i];
		if (high[i] > most) most = high[i];
	}
	if (least > most) return null;
	return [Math.floor((least - room) / step) * step, Math.ceil((most + room) / step) * step];
}

/**
 * The scale of torque at each instant: nought is always on it, negative values (back-pedalling, noise) as well.
 *
 * @param shown lowest and highest values in view, Nm
 * @example instantTorqueDomain({ low: [-3], high: [41] }) // [-20, 60]
 */
export function instantTorqueDomain(shown: ValueRange): [number, number] {
	const [low, high] = heldIn(shown, 20, 1) ?? [0, 40];
	return [Math.min(0, low), Math.max(40, high)];
}

/**
 * A scale made for whole seconds, widened for what was seen between them.
 *
 * @param domain of the values at one a second
 * @example widenedDomain([60, 100], { low: [71], high: [142] }) // [60, 150]
 */
export function widenedDomain(domain: readonly [number, number], shown: ValueRange): [number, number] {
	const [low, high] = heldIn(shown, 10, 3) ?? domain;
	return [Math.max(0, Math.min(domain[0], low)), Math.max(domain[1], high)];
}
