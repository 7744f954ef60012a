import { driveSignals } from '../../../src/lib/drivetrain/driveSignals';
import { DEFAULT_CIRCUMFERENCE_M } from '../../../src/lib/drivetrain/nameGears';
import { secondGrid } from '../../../src/lib/drivetrain/secondGrid';
import { candidateFeatures, placeCandidate, type Placed } from '../../../src/lib/slip/candidateFeatures';
import { reportSizeDeg } from '../../../src/lib/slip/reportSizeDeg';
import { rideContext } from '../../../src/lib/slip/rideContext';
import { observationRows, type ObservationRows } from './observationRows';
import type { LabelledRide, TrueEvent } from './labelledRides';
import { slipWindow } from '../../../src/lib/slip/slipWindow';

/** All candidates of one ride with what they were. */
export interface GatheredRide {
	readonly name: string;
	readonly group: string;
	readonly km: number;
	readonly events: readonly TrueEvent[];
	readonly rows: Float64Array[];
	/** seconds around each candidate for a net (SlipWindow.flat) */
	readonly windows: Float32Array[];
	/** first second of each candidate */
	readonly startS: number[];
	readonly overrunDeg: number[];
	/** size by which the detector decides whether it reports at all */
	readonly sizeDeg: number[];
	/** index in events of the slip that it is, -1 = none, -2 = counted neither way */
	readonly truth: number[];
	/** observation features of the second in which each event begins */
	readonly observation: ObservationRows;
}

const TOLERANCE_S = 3;
const LATEST_S = 3.2;
/** smaller ones are never reported: nothing is learned from them */
const LEAST_GATHERED_DEG = 36;
/** a slip that leaves less than this is not taught as one: nothing of it can be seen */
const LEAST_TAUGHT_DEG = 18;

/**
 * Finds the candidates of a ride and sets them beside the truth.
 *
 * @param wantsAlong for rides whose observed share is judged
 * @param wanted which candidates are kept, by their truth and first second; only for them features are computed
 */
export function gather(
	labelled: LabelledRide,
	wantsAlong = false,
	wanted: (truth: number, startS: number) => boolean = () => true
): GatheredRide {
	const { ride, bike, events } = labelled;
	const grid = secondGrid(ride, bike.circumferenceM ?? DEFAULT_CIRCUMFERENCE_M);
	const context = rideContext(driveSignals(grid), bike);
	const out: GatheredRide = {
		name: labelled.name,
		group: labelled.group,
		km: labelled.km,
		events,
		rows: [],
		windows: [],
		startS: [],
		overrunDeg: [],
		sizeDeg: [],
		truth: [],
		observation: observationRows(context, labelled, events, wantsAlong)
	};
	const all: Placed[] = [];
	for (const candidate of context.candidates) {
		const placed = placeCandidate(context, candidate);
		const sizeDeg = reportSizeDeg(context, placed);
		if (sizeDeg < LEAST_GATHERED_DEG) continue;
		all.push(placed);
		out.startS.push(placed.from);
		out.overrunDeg.push(placed.carefulDeg);
		out.sizeDeg.push(sizeDeg);
		const was = whatItWas(events, placed.peak);
		// a slip that left no jump of its size here teaches nothing: neither as one nor as none
		const shown = was < 0 || Math.max(placed.carefulDeg, placed.generousDeg) >= 0.35 * events[was].crankDeg;
		out.truth.push(shown ? was : -2);
	}
	keepOneEach(out);
	const keep = all.map(({ from }, i) => wanted(out.truth[i], from));
	const chosen = <T>(values: readonly T[]) => values.filter((_, i) => keep[i]);
	return {
		...out,
		rows: chosen(all).map((placed) => candidateFeatures(context, placed)),
		windows: chosen(all).map((placed) => slipWindow(context, placed, reportSizeDeg(context, placed)).flat),
		startS: chosen(out.startS),
		overrunDeg: chosen(out.overrunDeg),
		sizeDeg: chosen(out.sizeDeg),
		truth: chosen(out.truth)
	};
}

/** Of the candidates near one slip only the largest is it; the others are counted neither way. */
function keepOneEach({ truth, sizeDeg }: GatheredRide): void {
	const largest = new Map<number, number>();
	truth.forEach((was, i) => {
		if (was >= 0 && !(sizeDeg[i] <= sizeDeg[largest.get(was) ?? i] && largest.has(was))) largest.set(was, i);
	});
	truth.forEach((was, i) => {
		if (was >= 0 && largest.get(was) !== i) truth[i] = -2;
	});
}

function whatItWas(events: readonly TrueEvent[], peak: number): number {
	let best = -1;
	let bestOff = Infinity;
	events.forEach((event, i) => {
		// cadence lags the hub by up to two seconds and the jump may fill the record after that
		const within = peak >= event.t0 - 1.6 && peak <= event.t1 + LATEST_S;
		const off = within ? Math.abs(peak - event.t0 - 1) : Infinity;
		if (off < bestOff) {
			bestOff = off;
			best = i;
		}
	});
	if (best >= 0) {
		const { kind, crankDeg } = events[best];
		return kind === 'chain skip' || crankDeg < LEAST_TAUGHT_DEG ? -2 : best;
	}
	return events.some((e) => peak >= e.t0 - TOLERANCE_S && peak <= e.t1 + TOLERANCE_S) ? -2 : -1;
}
