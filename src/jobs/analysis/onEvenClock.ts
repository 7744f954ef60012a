/** Channels of one clock laid out evenly, so that a place in the array is an instant. */
export interface EvenClock {
	/** seconds from one value to the next */
	readonly sampleS: number;
	/** the values of a channel from second 0 on; NaN where none was recorded */
	readonly values: (timeS: ArrayLike<number>, value: ArrayLike<number>) => Float64Array;
}

/** a value is not carried further than this beside its own instant, samples */
const REACH = 0.75;
/** steps that tell the beat */
const STEPS_LOOKED_AT = 1001;
/** mostly gaps: such a recording would take more room laid out than as it is */
const MOST_SLOTS_A_SAMPLE = 4;

/**
 * The even clock nearest to that of a recording: its usual step, from second 0 on.
 *
 * @param timeS instants of a recording, seconds, rising
 * @param durationS its length
 * @returns null for fewer than two instants, or where gaps make up most of it
 */
export function onEvenClock(timeS: ArrayLike<number>, durationS: number): EvenClock | null {
	if (timeS.length < 2) return null;
	const every = Math.max(1, Math.floor((timeS.length - 1) / STEPS_LOOKED_AT));
	const steps: number[] = [];
	for (let i = 1; i < timeS.length; i += every) steps.push(timeS[i] - timeS[i - 1]);
	steps.sort((a, b) => a - b);
	// microseconds: clocks are written in thousandths of a second or finer
	const sampleS = Math.round(steps[steps.length >> 1] * 1e6) / 1e6;
	if (!(sampleS > 0)) return null;
	const slots = Math.floor(durationS / sampleS + 1e-6) + 1;
	if (!(slots <= MOST_SLOTS_A_SAMPLE * timeS.length + 1000)) return null;
	return { sampleS, values: (times, value) => nearest(times, value, sampleS, slots) };
}

function nearest(
	timeS: ArrayLike<number>,
	value: ArrayLike<number>,
	sampleS: number,
	slots: number
): Float64Array {
	const result = new Float64Array(slots).fill(NaN);
	let at = 0;
	for (let slot = 0; slot < slots; slot++) {
		const instant = slot * sampleS;
		while (at + 1 < timeS.length && Math.abs(timeS[at + 1] - instant) <= Math.abs(timeS[at] - instant)) at++;
		if (Math.abs(timeS[at] - instant) <= REACH * sampleS) result[slot] = value[at];
	}
	return result;
}
