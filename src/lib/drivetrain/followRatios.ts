import type { DriveSignals } from './driveSignals';
import type { LearnedRatio } from './learnRatios';

/** Cost of a change of gear, in the unit of a log likelihood; a shift comes about twice a minute. */
const SHIFT_COST = 5;
/** Where a shift was recorded a change is more likely. */
const RECORDED_SHIFT_COST = 2;
/** A second that fits no gear (noise, a dip, a slip) costs this much at most. */
const MISFIT_COST = 6;

/**
 * Which learned ratio is in at each second: the cheapest path through the gears (Viterbi 1967), with a
 * heavy-tailed misfit, so that a second or two beside every gear does not move the path.
 *
 * @param signals the ride's signals
 * @param ratios the ride's learned ratios
 * @returns index into ratios for every second; empty ratios give -1 everywhere
 */
export function followRatios(signals: DriveSignals, ratios: readonly LearnedRatio[]): Int16Array {
	const { seconds, shiftS } = signals.grid;
	const gears = ratios.length;
	const path = new Int16Array(seconds).fill(-1);
	if (gears === 0) return path;
	const nearShift = new Uint8Array(seconds);
	for (const at of shiftS) nearShift.fill(1, Math.max(0, at - 1), Math.min(seconds, at + 4));
	const { logRatio, pressing } = signals;
	const centres = Float64Array.from(ratios, (ratio) => ratio.logRatio);
	const width = Math.max(0.012, 1.2 * signals.noise);
	const from = new Uint8Array(seconds * gears);
	let cost = new Float64Array(gears);
	let next = new Float64Array(gears);
	let cheapest = 0;
	for (let t = 0; t < seconds; t++) {
		const change = cost[cheapest] + (nearShift[t] ? RECORDED_SHIFT_COST : SHIFT_COST);
		const known = pressing[t] === 1;
		const here = logRatio[t];
		const row = t * gears;
		let least = 0;
		for (let g = 0; g < gears; g++) {
			const stays = cost[g] <= change;
			let now = stays ? cost[g] : change;
			from[row + g] = stays ? g : cheapest;
			if (known) {
				const off = (here - centres[g]) / width;
				const misfit = 0.5 * off * off;
				now += misfit < MISFIT_COST ? misfit : MISFIT_COST;
			}
			next[g] = now;
			if (now < next[least]) least = g;
		}
		cheapest = least;
		[cost, next] = [next, cost];
	}
	let gear = 0;
	for (let g = 1; g < gears; g++) if (cost[g] < cost[gear]) gear = g;
	for (let t = seconds - 1; t >= 0; t--) {
		path[t] = gear;
		gear = from[t * gears + gear];
	}
	return path;
}
