import type { LabelledRide, TrueEvent } from './labelledRides';
import { observable } from '../../../src/lib/slip/detectionLimit';
import { observationFeatures } from '../../../src/lib/slip/observationFeatures';
import type { RideContext } from '../../../src/lib/slip/rideContext';
import { isTooSlow } from '../../../src/lib/slip/rideResponse';
import { speedFollowsHub } from '../../../src/lib/slip/speedFollowsHub';

/** What the observation model sees of a ride: at its slips, and at every so many seconds of its distance. */
export interface ObservationRows {
	/** features of the second in which each event begins; null where nothing is observed whatever they are */
	readonly atEvents: (Float64Array | null)[];
	/** features of every STEP-th second in which a slip could show */
	readonly along: Float64Array[];
	/** distance of STEP seconds from each of them on, m */
	readonly alongM: number[];
	readonly totalM: number;
}

const STEP = 5;

/** Gathers them; `along` stays empty unless it is wanted. */
export function observationRows(
	context: RideContext,
	{ ride, bike }: LabelledRide,
	events: readonly TrueEvent[],
	wanted: boolean
): ObservationRows {
	const columns = observationFeatures(context);
	const { grid } = context.signals;
	const canSlip = observable(context);
	if (isTooSlow(context.response) || !speedFollowsHub(ride, bike)) canSlip.fill(0);
	const row = (t: number) => Float64Array.from(columns, (column) => column[t]);
	const atEvents = events.map((event) => {
		const t = Math.min(grid.seconds - 1, Math.floor(event.t0));
		return canSlip[t] ? row(t) : null;
	});
	const along: Float64Array[] = [];
	const alongM: number[] = [];
	for (let t = 0; wanted && t + STEP < grid.seconds; t += STEP) {
		if (!canSlip[t]) continue;
		along.push(row(t));
		alongM.push(grid.distanceM[t + STEP] - grid.distanceM[t]);
	}
	return { atEvents, along, alongM, totalM: grid.distanceM[grid.seconds - 1] };
}
