/** What runs from left to right under a ride: its time, or the distance ridden. */
export interface RideAxis {
	readonly kind: 'time' | 'distance';
	/** where a second of the ride lies, in seconds or metres; it never falls */
	readonly at: (timeS: number) => number;
	/** the first second that lies there */
	readonly timeAt: (place: number) => number;
	/** its length in seconds or metres */
	readonly end: number;
	/** nothing closer than this is shown */
	readonly closest: number;
	/** the second from which round times are counted; the beginning where it is left out */
	readonly zeroS?: number;
}

/** At 1 Hz there is no more to see in less than this. */
const CLOSEST = { time: 5, distance: 20 } as const;
/** A ride that hardly left its place (or a trainer without distance) has no axis of distance. */
const LEAST_M = 100;

/** @param endS length of the ride, seconds, > 0 */
export function timeAxis(endS: number): RideAxis {
	return { kind: 'time', at: (timeS) => timeS, timeAt: (timeS) => timeS, end: endS, closest: CLOSEST.time };
}

/**
 * The distance ridden as an axis: a stop takes no room on it.
 *
 * @param distanceM one value a second, metres; NaN = not known, taken as not moved
 * @param endS length of the ride, seconds
 * @returns null when the recording has no distance to speak of
 * @example distanceAxis(Float32Array.of(0, 60, 60, 160), 3)?.timeAt(110) // 2.5
 */
export function distanceAxis(distanceM: Float32Array, endS: number): RideAxis | null {
	const wayM = new Float64Array(distanceM.length);
	let reachedM = 0;
	for (let i = 0; i < wayM.length; i++) {
		// written so that NaN does not move
		if (distanceM[i] > reachedM) reachedM = distanceM[i];
		wayM[i] = reachedM;
	}
	if (reachedM < LEAST_M) return null;
	const last = wayM.length - 1;
	const at = (timeS: number) => {
		const place = Math.min(last, Math.max(0, timeS));
		const before = Math.floor(place);
		const after = Math.min(last, before + 1);
		return wayM[before] + (place - before) * (wayM[after] - wayM[before]);
	};
	const timeAt = (placeM: number) => {
		if (placeM >= reachedM) return endS;
		let [low, high] = [0, last];
		while (low < high) {
			const middle = (low + high) >> 1;
			if (wayM[middle] >= placeM) high = middle;
			else low = middle + 1;
		}
		if (low === 0) return 0;
		return low - (wayM[low] - placeM) / (wayM[low] - wayM[low - 1]);
	};
	return { kind: 'distance', at, timeAt, end: reachedM, closest: CLOSEST.distance };
}
