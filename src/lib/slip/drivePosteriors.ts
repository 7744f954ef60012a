import { driveEmissions, type SecondShown } from './driveEmissions';
import { NEAR_GEARS, SLIP, STATES, TO_NEAR_GEAR, TO_OTHER_GEAR, WITHIN_GEAR } from './driveModel';

/** Chances of the states at each second of a stretch, given all of the stretch; gears added up. */
export interface DrivePosteriors {
	/** index = second of the stretch x number of states + state */
	readonly chance: Float64Array;
	/** crank degrees beyond the gear if the second is one of a slip */
	readonly slipDeg: Float64Array;
}

/**
 * Goes forward and backward through a stretch (Rabiner 1989, Proceedings of the IEEE 77) over all states in all
 * gears.
 *
 * @param seconds number of seconds
 * @param shown what each second shows
 * @param gears ln(crank turns per metre), ascending, at least one
 * @returns chances that add up to 1 at each second
 */
export function drivePosteriors(
	seconds: number,
	shown: (second: number) => SecondShown & { readonly rpm: number; readonly mps: number },
	gears: Float64Array
): DrivePosteriors {
	const count = gears.length;
	const width = STATES * count;
	const { emission, forward, row } = scratch(seconds, width);
	for (let t = 0, at = 0; t < seconds; t++, at += width) {
		const here = emission.subarray(at, at + width);
		driveEmissions(shown(t), gears, here);
		const now = forward.subarray(at, at + width);
		if (t === 0) now.fill(1);
		else move(forward.subarray(at - width, at), now, count, false);
		let sum = 0;
		for (let i = 0; i < width; i++) sum += now[i] *= here[i];
		for (let i = 0; i < width; i++) now[i] /= sum;
	}
	const chance = new Float64Array(seconds * STATES);
	const slipDeg = new Float64Array(seconds);
	const backward = row.subarray(0, width).fill(1);
	const weighted = row.subarray(width, 2 * width);
	for (let t = seconds - 1; t >= 0; t--) {
		const at = t * width;
		let all = 0;
		for (let s = 0; s < STATES; s++) {
			let sum = 0;
			for (let i = s * count; i < (s + 1) * count; i++) sum += forward[at + i] * backward[i];
			chance[t * STATES + s] = sum;
			all += sum;
		}
		const slip = chance[t * STATES + SLIP];
		let turns = 0;
		for (let g = 0, i = SLIP * count; g < count; g++, i++)
			turns += forward[at + i] * backward[i] * Math.exp(gears[g]);
		const { rpm, mps } = shown(t);
		slipDeg[t] = 6 * (rpm - 60 * mps * (turns / slip)) || 0;
		for (let s = 0; s < STATES; s++) chance[t * STATES + s] /= all;
		let sum = 0;
		for (let i = 0; i < width; i++) sum += weighted[i] = backward[i] * emission[at + i];
		for (let i = 0; i < width; i++) weighted[i] /= sum;
		move(weighted, backward, count, true);
	}
	return { chance, slipDeg };
}

let buffers = { emission: new Float64Array(0), forward: new Float64Array(0), row: new Float64Array(0) };
let sums = new Float64Array(1);

/** The same memory for every stretch: thousands of them make up a ride. */
function scratch(seconds: number, width: number) {
	if (buffers.emission.length < seconds * width || buffers.row.length < 2 * width) {
		const size = 2 * seconds * width;
		buffers = {
			emission: new Float64Array(size),
			forward: new Float64Array(size),
			row: new Float64Array(size)
		};
		sums = new Float64Array(size + 1);
	}
	return buffers;
}

const WITHIN = WITHIN_GEAR.flatMap((row, from) =>
	row.flatMap((chance, to) => (chance > 0 ? [{ from, to, chance }] : []))
);

/** One second forward or backward; changes of gear cost the number of gears, not its square, by running sums. */
function move(row: Float64Array, out: Float64Array, count: number, back: boolean): void {
	out.fill(0);
	for (const { from, to, chance } of WITHIN) {
		const source = (back ? to : from) * count;
		const target = (back ? from : to) * count;
		for (let g = 0; g < count; g++) out[target + g] += chance * row[source + g];
	}
	for (const { from, to, chance } of TO_OTHER_GEAR) {
		const source = (back ? to : from) * count;
		const target = (back ? from : to) * count;
		for (let g = 0; g < count; g++) sums[g + 1] = sums[g] + row[source + g];
		const any = (chance * (1 - TO_NEAR_GEAR) * sums[count]) / count;
		const near = (chance * TO_NEAR_GEAR) / (2 * NEAR_GEARS);
		for (let g = 0; g < count; g++) {
			const low = g > NEAR_GEARS ? g - NEAR_GEARS : 0;
			const high = g + NEAR_GEARS < count ? g + NEAR_GEARS + 1 : count;
			out[target + g] += any + near * (sums[high] - sums[low] - row[source + g]);
		}
	}
}
