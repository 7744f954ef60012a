import type { Placed } from './candidateFeatures';
import type { RideContext } from './rideContext';

/** How well the gears alone explain the seconds around a candidate, and how well with a slip in it. */
export interface Explanation {
	/** cost (negative log likelihood) of the cheapest way through the gears without a slip */
	readonly gearsOnly: number;
	/** the same when the crank may run ahead freely in the candidate's seconds */
	readonly withSlip: number;
	/** crank degrees beyond the gears of the second way */
	readonly excessDeg: number;
	/** changes of gear in the first way, within three seconds around the candidate */
	readonly changes: number;
}

const AROUND_S = 5;
/** Costs of a change of gear in one second: a shift about twice a minute; recorded ones are no surprise. */
const CHANGE = 3.5;
const CHANGE_RECORDED = 1.5;
const CHANGE_UNRECORDED = 5.5;
const MOST_MISFIT = 14;
/** Rounding of a whole-rpm cadence, rpm as a standard deviation. */
const ROUNDING_RPM = 0.29;
const LEAST_SD = 0.006;
const SAME_GEAR = 0.008;

/**
 * Sets two explanations of the seconds around a candidate side by side (Viterbi 1967 over the bike's gears): gears
 * and changes between them, in which a second of change may lie anywhere between the two, against the same with the
 * crank running ahead. Without pressing, the crank may lag behind any gear.
 */
export function explainByGears(context: RideContext, placed: Placed): Explanation {
	const from = Math.max(0, placed.from - AROUND_S);
	const to = Math.min(context.signals.grid.seconds - 1, placed.to + AROUND_S);
	const gears = gearsNear(context, placed, from, to);
	const none = cheapest(context, placed, gears, from, to, false);
	const slip = cheapest(context, placed, gears, from, to, true);
	let excessDeg = 0;
	const { cadenceRpm } = context.signals.grid;
	for (let t = placed.from; t <= placed.to; t++) {
		const high = Math.max(gears[slip.path[t - from]], gears[slip.path[Math.max(0, t - from - 1)]]);
		const gain = 6 * (cadenceRpm[t] - 60 * context.signals.speedMps[t] * Math.exp(high));
		if (gain > -Infinity) excessDeg += gain;
	}
	let changes = 0;
	for (let t = Math.max(from + 1, placed.from - 1); t <= Math.min(to, placed.to + 2); t++) {
		if (none.path[t - from] !== none.path[t - from - 1]) changes++;
	}
	return { gearsOnly: none.cost, withSlip: slip.cost, excessDeg, changes };
}

/** Known gears in the range of these seconds, and the ratios just before and after, which may be unknown gears. */
export function gearsNear(context: RideContext, placed: Placed, from: number, to: number): Float64Array {
	let low = Infinity;
	let high = -Infinity;
	for (let t = from; t <= to; t++) {
		const ratio = context.signals.logRatio[t];
		if (ratio < low) low = ratio;
		if (ratio > high) high = ratio;
	}
	const own = [context.base.justBefore[placed.from], context.base.justAfter[placed.to], placed.high];
	const near = own.filter((ratio) => !Number.isNaN(ratio));
	for (const ratio of context.gearRatios) if (ratio > low - 0.12 && ratio < high + 0.05) near.push(ratio);
	near.sort((a, b) => a - b);
	return Float64Array.from(near.filter((ratio, i) => i === 0 || ratio - near[i - 1] > SAME_GEAR));
}

function cheapest(
	context: RideContext,
	placed: Placed,
	gears: Float64Array,
	from: number,
	to: number,
	mayRunAhead: boolean
): { cost: number; path: Uint8Array } {
	const count = gears.length;
	const seconds = to - from + 1;
	const { logRatio, pressing, grid } = context.signals;
	const back = new Uint8Array(seconds * count);
	let cost = new Float64Array(count);
	let next = new Float64Array(count);
	for (let t = from; t <= to; t++) {
		const ratio = logRatio[t];
		const known = !Number.isNaN(ratio);
		const sd = Math.hypot(0.9 * context.noise[t], ROUNDING_RPM / grid.cadenceRpm[t], LEAST_SD);
		const ahead = mayRunAhead && t >= placed.from && t <= placed.to;
		const change = changeCost(context, t);
		for (let g = 0; g < count; g++) {
			let best = Infinity;
			let origin = g;
			for (let other = 0; other < count; other++) {
				let here = cost[other];
				if (t === from && other !== g) continue;
				if (other !== g) here += change;
				if (here >= best) continue;
				if (known)
					here += misfit(
						ratio,
						gears[Math.min(g, other)],
						gears[Math.max(g, other)],
						sd,
						pressing[t] === 1,
						ahead
					);
				if (here < best) {
					best = here;
					origin = other;
				}
			}
			next[g] = best;
			back[(t - from) * count + g] = origin;
		}
		[cost, next] = [next, cost];
	}
	let gear = 0;
	for (let g = 1; g < count; g++) if (cost[g] < cost[gear]) gear = g;
	const total = cost[gear];
	const path = new Uint8Array(seconds);
	for (let t = seconds - 1; t >= 0; t--) {
		path[t] = gear;
		gear = back[t * count + gear];
	}
	return { cost: total, path };
}

/** Half the squared misfit in standard deviations, straight from three on, with a ceiling. */
function misfit(
	ratio: number,
	low: number,
	high: number,
	sd: number,
	pressing: boolean,
	ahead: boolean
): number {
	let off = 0;
	if (ratio > high) off = ahead ? 0 : ratio - high;
	else if (ratio < low && pressing) off = low - ratio;
	const z = off / sd;
	return Math.min(MOST_MISFIT, z < 3 ? 0.5 * z * z : 3 * z - 4.5);
}

function changeCost(context: RideContext, t: number): number {
	const { shiftS, gearCode } = context.signals.grid;
	if (shiftS.length < 5 || gearCode[t] < 0) return CHANGE;
	let low = 0;
	let high = shiftS.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if (shiftS[middle] < t - 4) low = middle + 1;
		else high = middle;
	}
	return shiftS[low] <= t + 1 ? CHANGE_RECORDED : CHANGE_UNRECORDED;
}
