import { HUB_TORQUE_EDGES_NM, hubTorqueBin } from './hubTorqueBins';
import { onsetTorque } from './onsetTorques';
import type { RideContext } from './rideContext';

/** Where a slip is put into a ride. */
export const INSERTION_PLACES = ['steady', 'near a shift', 'start', 'burst'] as const;
export type InsertionPlace = (typeof INSERTION_PLACES)[number];

/** A second in which a slip can begin. */
export interface PossibleOnset {
	readonly second: number;
	/** lower edge of the torque bin in which its events are filed, Nm; null = not known */
	readonly torqueFromNm: number | null;
}

/** seconds around a change of gear that count as near it */
const NEAR_SHIFT_S = 3;
/** pressing that began at most this long ago is a start */
const START_S = 6;
/** a burst needs so much pressing after its first slip, s */
export const BURST_S = 20;
/** slips that the ride has of its own are left alone by this much, s */
const CLEAR_OF_OWN_S = 15;
const EDGE_S = 12;

/**
 * The seconds in which a slip can be put into a ride, by place: the rider presses and the wheel rolls. A second
 * near a change of gear or soon after pressing began is such a place only; all others are steady, of them those
 * with pressing ahead are places for bursts as well.
 *
 * @param own spans of the ride's own events, seconds
 * @returns possible onsets by place, in order of time
 */
export function insertionPlaces(
	context: RideContext,
	powerAt: 'crank' | 'hub',
	own: readonly { startS: number; endS: number }[]
): Record<InsertionPlace, PossibleOnset[]> {
	const { signals, sinceRest, untilRest } = context;
	const { seconds, cadenceRpm } = signals.grid;
	const shifting = nearShifts(context);
	const places: Record<InsertionPlace, PossibleOnset[]> = {
		steady: [],
		'near a shift': [],
		start: [],
		burst: []
	};
	for (let t = EDGE_S; t + EDGE_S < seconds; t++) {
		const presses = sinceRest[t] > 1 && cadenceRpm[t] >= 35 && signals.speedMps[t] > 1.5;
		if (!presses || own.some(({ startS, endS }) => t > startS - CLEAR_OF_OWN_S && t < endS + CLEAR_OF_OWN_S))
			continue;
		const bin = hubTorqueBin(onsetTorque(context, t, powerAt));
		const onset = { second: t, torqueFromNm: bin < 0 ? null : HUB_TORQUE_EDGES_NM[bin] };
		const place = shifting[t] ? 'near a shift' : sinceRest[t] <= START_S ? 'start' : 'steady';
		places[place].push(onset);
		if (place === 'steady' && untilRest[t] > BURST_S) places.burst.push(onset);
	}
	return places;
}

function nearShifts({ path, signals }: RideContext): Uint8Array {
	const { seconds, shiftS } = signals.grid;
	const near = new Uint8Array(seconds);
	const mark = (t: number) =>
		near.fill(1, Math.max(0, t - NEAR_SHIFT_S), Math.min(seconds, t + NEAR_SHIFT_S + 1));
	for (const t of shiftS) mark(t);
	for (let t = 1; t < seconds; t++) if (path[t] !== path[t - 1]) mark(t);
	return near;
}
