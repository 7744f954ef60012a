import type { Channel } from './ride';

/** a value is bridged over so many of its channel's usual steps at most */
const LONGEST_STEPS = 3;

/**
 * Values of one channel at the instants of another clock, straight between neighbours. Nothing is made up before the
 * first value, after the last one, or across a hole.
 *
 * @param channel on its own clock, rising
 * @param atS instants that are asked for, rising
 * @returns one value for each instant; NaN = not known
 */
export function valuesAt({ timeS, value }: Channel, atS: Float64Array): Float64Array {
	const out = new Float64Array(atS.length).fill(NaN);
	const longestS = LONGEST_STEPS * usualStep(timeS);
	let next = 0;
	for (let i = 0; i < atS.length; i++) {
		while (next < timeS.length && timeS[next] < atS[i]) next++;
		if (next === timeS.length) break;
		if (timeS[next] === atS[i]) out[i] = value[next];
		else if (next > 0 && timeS[next] - timeS[next - 1] <= longestS) {
			const share = (atS[i] - timeS[next - 1]) / (timeS[next] - timeS[next - 1]);
			out[i] = value[next - 1] + share * (value[next] - value[next - 1]);
		}
	}
	return out;
}

/** median of the steps of a clock, seconds; 0 = fewer than two instants */
function usualStep(timeS: Float64Array): number {
	const steps = Float64Array.from(
		{ length: Math.max(0, timeS.length - 1) },
		(_, i) => timeS[i + 1] - timeS[i]
	);
	return steps.sort()[Math.floor(steps.length / 2)] ?? 0;
}
