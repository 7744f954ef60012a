import { labOf } from './labOf';
import type { Rgba } from './rgbaOf';

/** Distance of two colours in CIELAB (ISO/CIE 11664-4); about 2 is just seen side by side. */
export function colourDifference(one: Rgba, other: Rgba): number {
	const [a, b] = [labOf(one), labOf(other)];
	return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
