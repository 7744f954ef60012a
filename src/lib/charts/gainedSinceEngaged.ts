/**
 * The running sum of crank angle gained on the wheel, counted afresh from each pick-up. The sum over a
 * whole ride falls by millions of degrees in coasting, and a slip of 90 would not show in it; counted
 * from the last pick-up, engaged riding lies at zero, a slip is a step up, coasting falls away below.
 *
 * @param gainedHubDeg running sum, hub degrees, one value a second; NaN = not known
 * @param state number of the drive's state, one value a second
 * @param restStates the states in which nothing is driven (stopped, coasting, not observed)
 * @param slipState the state of a slip: a failed pick-up follows coasting at once, and what its first second
 *   gains belongs to it
 * @returns hub degrees since the last pick-up; while coasting, since the last engaged second
 */
export function gainedSinceEngaged(
	gainedHubDeg: Float32Array,
	state: Float32Array,
	restStates: ReadonlySet<number>,
	slipState: number
): Float32Array {
	const out = new Float32Array(gainedHubDeg.length).fill(NaN);
	let zero = NaN;
	let rested = true;
	for (let i = 0; i < out.length; i++) {
		const gained = gainedHubDeg[i];
		if (Number.isNaN(gained)) {
			rested = true;
			continue;
		}
		const rests = restStates.has(state[i]);
		if (rested && !rests)
			zero = state[i] === slipState && i > 0 ? known(gainedHubDeg[i - 1], gained) : gained;
		rested = rests;
		if (Number.isNaN(zero)) zero = gained;
		out[i] = gained - zero;
	}
	return out;
}

function known(value: number, otherwise: number): number {
	return Number.isNaN(value) ? otherwise : value;
}
