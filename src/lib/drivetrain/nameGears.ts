import type { Bike, Gear } from './bike';
import type { LearnedRatio } from './learnRatios';

/** Start value for a tyre whose size is not known: 40-622 (ISO 5775), about 2.15 m rolled. */
export const DEFAULT_CIRCUMFERENCE_M = 2.15;

/** A stated gear and a learned one are the same when they differ by no more than this. */
const SAME = 0.022;

export interface NamedGears {
	readonly gears: Gear[];
	/** circumference with which the stated gears fit the ride best, m; the stated or default one when not known */
	readonly circumferenceM: number;
	/** true when stated tooth counts fitted the ride */
	readonly fitted: boolean;
}

/**
 * Gives the learned ratios their tooth counts where the bike's are stated and fit.
 *
 * @param ratios the ride's learned ratios
 * @param bike what was stated
 * @returns one gear a learned ratio, in the same order
 */
export function nameGears(ratios: readonly LearnedRatio[], bike: Bike): NamedGears {
	const statedM = bike.circumferenceM ?? DEFAULT_CIRCUMFERENCE_M;
	const pairs = (bike.chainrings ?? []).flatMap((chainring) =>
		(bike.cassette ?? []).map((sprocket) => ({ chainring, sprocket }))
	);
	const scale =
		pairs.length > 0 ? bestScale(ratios, pairs, statedM, bike.circumferenceM !== undefined) : null;
	const circumferenceM = scale?.circumferenceM ?? statedM;
	const gears = ratios.map((learned): Gear => {
		const developmentM = Math.exp(-learned.logRatio);
		const ratio = developmentM / circumferenceM;
		const pair = scale ? nearest(pairs, ratio) : null;
		return {
			label: pair ? `${pair.chainring}/${pair.sprocket}` : `${ratio.toFixed(2)}:1`,
			ratio: pair ? pair.chainring / pair.sprocket : ratio,
			developmentM,
			chainring: pair?.chainring ?? null,
			sprocket: pair?.sprocket ?? null,
			seconds: learned.seconds
		};
	});
	return { gears, circumferenceM, fitted: scale !== null };
}

type Pair = { chainring: number; sprocket: number };

function nearest(pairs: readonly Pair[], ratio: number): Pair | null {
	let best: Pair | null = null;
	let bestOff = SAME;
	for (const pair of pairs) {
		const off = Math.abs(Math.log(pair.chainring / pair.sprocket / ratio));
		if (off < bestOff) {
			bestOff = off;
			best = pair;
		}
	}
	return best;
}

/** Tries circumferences around the stated one; null when even the best leaves half of the riding unexplained. */
function bestScale(
	ratios: readonly LearnedRatio[],
	pairs: readonly Pair[],
	statedM: number,
	stated: boolean
) {
	const reach = stated ? 0.06 : 0.15;
	const total = ratios.reduce((sum, ratio) => sum + ratio.seconds, 0);
	let best = { circumferenceM: statedM, score: 0 };
	for (let off = -reach; off <= reach; off += 0.002) {
		const circumferenceM = statedM * Math.exp(off);
		let score = 0;
		for (const { logRatio, seconds } of ratios) {
			const ratio = Math.exp(-logRatio) / circumferenceM;
			const pair = nearest(pairs, ratio);
			if (!pair) continue;
			const misfit = Math.log(pair.chainring / pair.sprocket / ratio) / SAME;
			score += seconds * (1 - misfit * misfit);
		}
		// a circumference near the stated one wins among equals
		score -= total * 0.15 * (off / reach) ** 2;
		if (score > best.score) best = { circumferenceM, score };
	}
	return best.score > 0.5 * total ? best : null;
}
