import { DRIVE_STATES, type DriveState } from '$lib/slip/analysis';

/** One lane of the ribbon for each thing that the drive may do; where nothing is known no lane is filled. */
export const DRIVE_LANES: readonly { readonly label: string; readonly states: readonly DriveState[] }[] = [
	{ label: 'drive', states: ['driving', 'slip'] },
	{ label: 'pick-up', states: ['picking up'] },
	{ label: 'shift', states: ['shifting'] },
	{ label: 'coast', states: ['coasting'] },
	{ label: 'stand', states: ['stopped'] }
];

/** Pixels of a column of the ribbon: finer would only cost. */
export const LANE_COLUMN = 2;

/** Seconds spent in a lane before each second of the ride: the share of any stretch is one subtraction. */
export type LaneSum = Uint32Array;

/** @param state number of the drive's state, one value a second */
export function laneSums(state: Float32Array): LaneSum[] {
	return DRIVE_LANES.map(({ states }) => {
		const numbers = new Set(states.map((name) => DRIVE_STATES.indexOf(name)));
		const sum = new Uint32Array(state.length + 1);
		for (let i = 0; i < state.length; i++) sum[i + 1] = sum[i] + (numbers.has(state[i]) ? 1 : 0);
		return sum;
	});
}

/**
 * How much of a stretch was spent in a lane, 0 to 1. A second's state holds for half a second on either side,
 * as the read-out takes it.
 *
 * @param fromS seconds, below toS; what lies outside the ride is in no lane
 * @example laneShare(laneSums(Float32Array.of(4, 4, 2))[0], 0.5, 2.5) // 0.5: one of two seconds driven
 */
export function laneShare(sum: LaneSum, fromS: number, toS: number): number {
	return (secondsBefore(sum, toS) - secondsBefore(sum, fromS)) / (toS - fromS);
}

/** Seconds spent in a lane before this time. */
export function secondsBefore(sum: LaneSum, timeS: number): number {
	const place = Math.min(sum.length - 1, Math.max(0, timeS + 0.5));
	const whole = Math.floor(place);
	return place === whole ? sum[whole] : sum[whole] + (place - whole) * (sum[whole + 1] - sum[whole]);
}
