/** metres a second that no bicycle exceeds, and metres that a pause or a coarse clock may hide */
const FASTEST_MPS = 40;
const SLACK_M = 100;

/**
 * Makes recorded distance one running sum. Where the device began again at a lower figure (a second
 * file of a chain, a reset) and stays there, the ride goes on from the last figure; a lone value that
 * falls back or leaps becomes missing. What the count held before the first record was not ridden in this
 * ride: it is taken off, or the wheel would seem to have gone that far, too.
 * @param timeS seconds from the first record, strictly increasing
 * @param distanceM metres as recorded, NaN = missing; changed in place
 * @returns how often the count began again, how many lone values were dropped, and the metres that the
 * count held before the ride (0 when its first value can have been ridden since the first record)
 */
export function continuousDistance(
	timeS: Float64Array,
	distanceM: Float64Array
): { restarts: number; dropped: number; beforeM: number } {
	let restarts = 0;
	let dropped = 0;
	let beforeM = 0;
	let offset = 0;
	let last = -1;
	for (let i = 0; i < distanceM.length; i++) {
		if (Number.isNaN(distanceM[i])) continue;
		const recorded = distanceM[i];
		const reachedM = last >= 0 ? distanceM[last] : 0;
		const sinceS = last >= 0 ? timeS[i] - timeS[last] : timeS[i];
		if (!follows(sinceS, recorded + offset - reachedM)) {
			if (!staysFrom(timeS, distanceM, i)) {
				distanceM[i] = NaN;
				dropped++;
				continue;
			}
			offset = reachedM - recorded;
			if (last >= 0) restarts++;
			else beforeM = recorded;
		}
		distanceM[i] = recorded + offset;
		last = i;
	}
	return { restarts, dropped, beforeM };
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
