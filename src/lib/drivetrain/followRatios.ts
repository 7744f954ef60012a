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
	const width = Math.max(0.012, 1.2 * signals.noise);
	const from = new Uint8Array(seconds * gears);
	let cost = new Float64Array(gears);
	let next = new Float64Array(gears);
	for (let t = 0; t < seconds; t++) {
		let cheapest = 0;
		for (let g = 1; g < gears; g++) if (cost[g] < cost[cheapest]) cheapest = g;
		const change = cost[cheapest] + (nearShift[t] ? RECORDED_SHIFT_COST : SHIFT_COST);
		const known = signals.pressing[t] === 1;
		for (let g = 0; g < gears; g++) {
			const stays = cost[g] <= change;
			let here = stays ? cost[g] : change;
			from[t * gears + g] = stays ? g : cheapest;
			if (known) {
				const off = (signals.logRatio[t] - ratios[g].logRatio) / width;
				here += Math.min(MISFIT_COST, 0.5 * off * off);
			}
			next[g] = here;
		}
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
