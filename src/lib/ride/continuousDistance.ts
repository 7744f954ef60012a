/** metres a second that no bicycle exceeds, and metres that a pause or a coarse clock may hide */
const FASTEST_MPS = 40;
const SLACK_M = 100;

/**
 * Makes recorded distance one running sum. Where the device began again at a lower figure (a second
 * file of a chain, a reset) and stays there, the ride goes on from the last figure; a lone value that
 * falls back or leaps becomes missing.
 * @param timeS seconds from the first record, strictly increasing
 * @param distanceM metres as recorded, NaN = missing; changed in place
 * @returns how often the count began again, and how many lone values were dropped
 */
export function continuousDistance(
	timeS: Float64Array,
	distanceM: Float64Array
): { restarts: number; dropped: number } {
	let restarts = 0;
	let dropped = 0;
	let offset = 0;
	let last = -1;
	for (let i = 0; i < distanceM.length; i++) {
		if (Number.isNaN(distanceM[i])) continue;
		const recorded = distanceM[i];
		if (last >= 0 && !follows(timeS[i] - timeS[last], recorded + offset - distanceM[last])) {
			if (!staysFrom(timeS, distanceM, i)) {
				distanceM[i] = NaN;
				dropped++;
				continue;
			}
			offset = distanceM[last] - recorded;
			restarts++;
		}
		distanceM[i] = recorded + offset;
		last = i;
	}
	return { restarts, dropped };
}

function follows(seconds: number, metres: number): boolean {
	return metres >= 0 && metres <= FASTEST_MPS * seconds + SLACK_M;
}

/** whether the next two values go on from value i: then the count began again, it is no lone error */
function staysFrom(timeS: Float64Array, distanceM: Float64Array, i: number): boolean {
	let at = i;
	let seen = 0;
	for (let k = i + 1; k < distanceM.length && seen < 2; k++) {
		if (Number.isNaN(distanceM[k])) continue;
		if (!follows(timeS[k] - timeS[at], distanceM[k] - distanceM[at])) return false;
		at = k;
		seen++;
	}
	return seen === 2;
}
