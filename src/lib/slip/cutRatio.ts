import type { DriveSignals } from '$lib/drivetrain/driveSignals';

/**
 * The ratio with its narrow peaks cut off: a morphological opening (Serra 1982, Image Analysis and Mathematical
 * Morphology). A change of gear goes one way and passes whole, however long it takes; what rises and falls again
 * within fewer than `widthS` seconds is cut to the higher of its two sides. Only pressing seconds count as a side.
 *
 * @param signals the ride's signals
 * @param widthS peaks narrower than this are cut, s
 * @param t the second asked about; it may be one without power
 * @returns ln(crank turns per metre); NaN where no `widthS` seconds of pressing hold the second
 * @example // ratios -1.8, -1.8, -1.5, -1.7, -1.7: cutRatio(signals, 2, 2) is -1.7
 */
export function cutRatio({ logRatio, pressing }: DriveSignals, widthS: number, t: number): number {
	let highest = NaN;
	for (let start = t - widthS + 1; start <= t; start++) {
		let least = Infinity;
		for (let k = start; k < start + widthS; k++) {
			const value = k === t || pressing[k] === 1 ? logRatio[k] : NaN;
			// a missing value makes the window worth nothing, and stays
			if (!(value >= least)) least = value;
			if (least !== least) break;
		}
		if (least === least && !(highest >= least)) highest = least;
	}
	return highest;
}
