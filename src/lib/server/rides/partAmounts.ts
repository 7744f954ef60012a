import { DRIVE_STATES, type ObservedStretch } from '$lib/slip/analysis';
import { UNDER_DRIVE } from '$lib/slip/rideExposure';

/** What is known of a ride second by second, and what it amounts to as a whole. */
export interface CutRide {
	readonly durationS: number;
	readonly totalM: number;
	readonly observedM: number;
	readonly drivenM: number;
	/** metres from the start, one a second */
	readonly distanceM: ArrayLike<number>;
	/** index in DRIVE_STATES, one a second */
	readonly state: ArrayLike<number>;
	readonly observed: readonly ObservedStretch[];
}

export interface PartAmount {
	readonly fromS: number;
	readonly toS: number;
	/** metres of the ride before this part */
	readonly fromM: number;
	readonly totalM: number;
	readonly observedM: number;
	readonly drivenM: number;
}

/**
 * What each part of a ride amounts to when it is cut by time: distance as recorded at the cut, observed
 * distance by the stretches before and after it, driven distance by the seconds under drive. The last part
 * takes what is left, so that the parts add up to the ride.
 *
 * @param cutsS seconds from the start of the ride, in order, strictly inside it
 */
export function partAmounts(ride: CutRide, cutsS: readonly number[]): PartAmount[] {
	const totalAt = [0, ...cutsS.map((cutS) => within(distanceAt(ride, cutS), ride.totalM)), ride.totalM];
	const observedAt = [
		0,
		...cutsS.map((cutS) => within(observedBefore(ride, cutS), ride.observedM)),
		ride.observedM
	];
	const wholeM = drivenBefore(ride, Infinity);
	const drivenAt = [
		0,
		...cutsS.map((cutS) => (wholeM > 0 ? (drivenBefore(ride, cutS) / wholeM) * ride.drivenM : 0)),
		ride.drivenM
	];
	const edges = [0, ...cutsS, ride.durationS];
	return edges.slice(1).map((toS, part) => ({
		fromS: edges[part],
		toS,
		fromM: totalAt[part],
		totalM: totalAt[part + 1] - totalAt[part],
		observedM: observedAt[part + 1] - observedAt[part],
		drivenM: drivenAt[part + 1] - drivenAt[part]
	}));
}

function distanceAt({ distanceM }: CutRide, atS: number): number {
	const second = Math.min(Math.floor(atS), distanceM.length - 1);
	const here = distanceM[second];
	const next = distanceM[Math.min(second + 1, distanceM.length - 1)];
	return here + (next - here) * (atS - second);
}

function observedBefore(ride: CutRide, cutS: number): number {
	return ride.observed.reduce((sum, { startS, endS, startM, endM }) => {
		if (endS <= cutS) return sum + endM - startM;
		return startS >= cutS ? sum : sum + Math.min(Math.max(distanceAt(ride, cutS), startM), endM) - startM;
	}, 0);
}

/** A second stands for the way to the next one, as in the exposure; the cut takes its share of a second. */
function drivenBefore({ distanceM, state }: CutRide, cutS: number): number {
	let metres = 0;
	for (let second = 0; second + 1 < distanceM.length && second < cutS; second++) {
		if (!UNDER_DRIVE.has(DRIVE_STATES[state[second]])) continue;
		const way = distanceM[second + 1] - distanceM[second];
		if (way > 0) metres += way * Math.min(1, cutS - second);
	}
	return metres;
}

function within(metres: number, mostM: number): number {
	return Number.isFinite(metres) ? Math.min(Math.max(metres, 0), mostM) : 0;
}
