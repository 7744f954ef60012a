import type { DriveSignals } from './driveSignals';

/** A ratio at which this ride's crank and wheel turn together. */
export interface LearnedRatio {
	/** ln(crank turns per metre) */
	readonly logRatio: number;
	readonly seconds: number;
	/** recorded gear code it was learned from, -1 = from the distribution of ratios alone */
	readonly gearCode: number;
}

const LOWEST = Math.log(1 / 14);
const HIGHEST = Math.log(1 / 0.9);
/** Width of a bin of ln ratio: 0.4 %, less than sensors scatter. */
const BIN = 0.004;
/** Two sprockets of a cassette differ by 4.5 % at the least (22 and 23 teeth). */
const CLOSEST = 0.03;
/** A gear that was in for less than this share of the pedalling is left out: shifts make such peaks. */
const LEAST_SHARE = 0.004;
/** And for less than this time. */
const LEAST_SECONDS = 12;

/**
 * Finds the gears of a ride as peaks of the distribution of its ratio in steady pedalling. Recorded tooth
 * counts are not used: they are often not the bike's.
 *
 * @param signals the ride's signals
 * @returns ratios in ascending order of ln(crank turns per metre); empty when nothing was pedalled
 */
export function learnRatios(signals: DriveSignals): LearnedRatio[] {
	const bins = Math.ceil((HIGHEST - LOWEST) / BIN);
	const counts = new Float64Array(bins);
	const { logRatio, pressing } = signals;
	const steady = Math.max(0.02, 2.5 * signals.noise);
	let total = 0;
	for (let t = 1; t + 1 < logRatio.length; t++) {
		if (!pressing[t]) continue;
		const near = middleOf(logRatio[t - 1], logRatio[t], logRatio[t + 1]);
		if (Math.abs(logRatio[t - 1] - near) > steady || Math.abs(logRatio[t + 1] - near) > steady) continue;
		const bin = Math.floor((logRatio[t] - LOWEST) / BIN);
		if (bin >= 0 && bin < bins) {
			counts[bin]++;
			total++;
		}
	}
	const smooth = smoothed(counts, Math.max(0.007, Math.min(0.014, 0.6 * signals.noise)) / BIN);
	return peaks(smooth, counts, total);
}

/** The middle one of three; the second where a neighbour was not recorded. */
function middleOf(a: number, b: number, c: number): number {
	if (Number.isNaN(a + c)) return b;
	return a + b + c - Math.max(a, b, c) - Math.min(a, b, c);
}

/** Convolution with a normal kernel of the given width in bins. */
function smoothed(counts: Float64Array, widthBins: number): Float64Array {
	const reach = Math.ceil(3 * widthBins);
	const kernel = Array.from({ length: 2 * reach + 1 }, (_, i) =>
		Math.exp(-0.5 * ((i - reach) / widthBins) ** 2)
	);
	const out = new Float64Array(counts.length);
	for (let i = 0; i < counts.length; i++) {
		if (counts[i] === 0) continue;
		for (let k = 0; k < kernel.length; k++) {
			const to = i + k - reach;
			if (to >= 0 && to < out.length) out[to] += counts[i] * kernel[k];
		}
	}
	return out;
}

/** Peaks from the highest down, no two closer than two neighbouring sprockets can be. */
function peaks(smooth: Float64Array, counts: Float64Array, total: number): LearnedRatio[] {
	const order: number[] = [];
	for (let i = 1; i + 1 < smooth.length; i++) {
		if (smooth[i] > smooth[i - 1] && smooth[i] >= smooth[i + 1]) order.push(i);
	}
	order.sort((a, b) => smooth[b] - smooth[a]);
	const apart = CLOSEST / BIN;
	const reach = Math.floor(0.02 / BIN);
	const kept: number[] = [];
	const found: LearnedRatio[] = [];
	for (const i of order) {
		if (kept.some((other) => Math.abs(other - i) < apart)) continue;
		let seconds = 0;
		for (let k = Math.max(0, i - reach); k <= Math.min(counts.length - 1, i + reach); k++)
			seconds += counts[k];
		if (seconds < Math.max(LEAST_SECONDS, LEAST_SHARE * total)) continue;
		kept.push(i);
		found.push({ logRatio: LOWEST + (i + 0.5) * BIN, seconds, gearCode: -1 });
	}
	return found.sort((a, b) => a.logRatio - b.logRatio);
}
