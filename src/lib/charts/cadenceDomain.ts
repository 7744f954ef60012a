import { CLOSE_UP_S } from './gainedCloseUp';

/**
 * The scale of the cadence strip: from nought for a long stretch; close up, where a surplus of 15 rpm has to
 * be seen, only the range in use, in tens.
 *
 * @param cadence one value a second, rpm; NaN = not known
 * @param engaged what the wheel asks for, same seconds; in fast coasting it leaves the strip at the top
 * @param window shown seconds [from, to]
 */
export function cadenceDomain(
	cadence: Float32Array,
	engaged: Float32Array,
	window: readonly [number, number]
): [number, number] {
	const close = window[1] - window[0] <= CLOSE_UP_S;
	const [from, to] = close ? [Math.max(0, Math.floor(window[0])), Math.ceil(window[1]) + 1] : [0, undefined];
	let [low, high] = [Infinity, 60];
	for (const value of cadence.subarray(from, to)) {
		if (value < low) low = value;
		if (value > high && value < 250) high = value;
	}
	if (close) for (const value of engaged.subarray(from, to)) if (value < low) low = value;
	const top = Math.ceil((high + 3) / 10) * 10;
	// with coasting in view the strip stands on nought, so that standing pedals look like it
	return [close && low >= 20 && low < top ? Math.floor((low - 3) / 10) * 10 : 0, top];
}
