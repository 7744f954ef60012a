import { heldIn, type ValueRange } from './fineDomains';

/**
 * The scale of speed close up, where it shows whether the wheel changed: only the range in use, at least 4 km/h.
 *
 * @param shown lowest and highest values in view, km/h; NaN = not known
 * @example speedDomain({ low: [21], high: [23] }) // [19, 25]
 */
export function speedDomain(shown: ValueRange): [number, number] {
	const [low, high] = heldIn(shown, 1, 2) ?? [0, 10];
	return [Math.max(0, low), high];
}
