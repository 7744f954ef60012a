/** Smallest and largest value of each group of samples; NaN where a group holds no value. */
export interface Level {
	/** samples in one group */
	readonly size: number;
	readonly low: Float32Array;
	readonly high: Float32Array;
}

/** One trace at its own rate with its coarser and coarser summaries, so that any zoom draws few points. */
export interface Levels {
	/** seconds between samples; sample i lies at fromS + i x stepS */
	readonly stepS: number;
	/** second of the first sample; 0 where it is left out */
	readonly fromS?: number;
	/** level 0 = the samples themselves (low and high are one array) */
	readonly levels: readonly Level[];
}

/** Each summary joins two groups, so that every zoom finds one near its pixels; of millions the first joins four. */
const MANY = 1_000_000;
const FEWEST = 8;

/**
 * Builds the summaries, each from groups of the one before. Extremes survive, so a spike of
 * one second still shows on a five-hour ride.
 *
 * @param values samples at a constant step; NaN = missing
 * @param stepS seconds between samples, > 0
 */
export function minMaxLevels(values: Float32Array, stepS = 1): Levels {
	const levels: Level[] = [{ size: 1, low: values, high: values }];
	for (let below = levels[0]; below.low.length > FEWEST; below = levels[levels.length - 1]) {
		const factor = levels.length === 1 && values.length > MANY ? 4 : 2;
		const count = Math.ceil(below.low.length / factor);
		const low = new Float32Array(count).fill(NaN);
		const high = new Float32Array(count).fill(NaN);
		for (let i = 0; i < below.low.length; i++) {
			const group = Math.floor(i / factor);
			// written so that NaN on either side gives way to a value
			if (!(low[group] <= below.low[i])) low[group] = Number.isNaN(below.low[i]) ? low[group] : below.low[i];
			if (!(high[group] >= below.high[i]))
				high[group] = Number.isNaN(below.high[i]) ? high[group] : below.high[i];
		}
		levels.push({ size: below.size * factor, low, high });
	}
	return { stepS, levels };
}
