/**
 * Values of the seconds in which the rider presses.
 *
 * @param values one a second
 * @param pressing 1 where the rider presses
 * @returns one a second; NaN where nobody presses
 */
export function whilePressing(values: Float64Array, pressing: Uint8Array): Float64Array {
	const out = new Float64Array(values.length);
	for (let t = 0; t < out.length; t++) out[t] = pressing[t] ? values[t] : NaN;
	return out;
}
