import { checkConfidence, checkCount, checkExposure } from './checks';
import { weightedCountRatio } from './weightedCountRatio';

/** One stratum (say, one band of load and age): what the reference did there, and what was watched anew. */
export interface ExpectedStratum {
	readonly referenceCount: number;
	readonly referenceExposure: number;
	readonly exposure: number;
	readonly count: number;
}

export interface CountedAgainstExpected {
	/** events counted in strata that can be compared */
	readonly counted: number;
	/** events that the reference would have had on the same exposure */
	readonly expected: number;
	/** standard deviation of the expected number, which comes from counts itself */
	readonly expectedSd: number;
	/** NaN when nothing was counted or expected, Infinity when nothing was expected */
	readonly ratio: number;
	readonly lower: number;
	readonly upper: number;
	/** exposure and events of strata in which the reference was never watched: left out above */
	readonly exposureLeftOut: number;
	readonly countLeftOut: number;
	readonly exposureCompared: number;
	readonly strataCompared: number;
}

/** How far counts scatter beyond single events: variance / mean, 1 or more (see `dispersion`). */
export interface Clustering {
	readonly counted?: number;
	readonly reference?: number;
}

/**
 * How many events were counted for each one that the reference would have had on the same exposure, stratum by
 * stratum, with limits that carry the chance in BOTH counts. With one stratum they are the exact conditional
 * limits of a rate ratio. A reference without events in a stratum counts as nought there, but the limits allow
 * for one event of the heaviest weight.
 *
 * @param strata fixed beforehand; counts whole, exposures >= 0
 * @param confidence two-sided, 0 < confidence < 1
 * @param clustering variance / mean of both counts where events come in bursts; values below 1 count as 1
 * @returns the ratio and what was left out; nothing comparable: { NaN, 0, Infinity }
 * @throws RangeError for counts, exposures or a confidence outside their ranges
 * @example countedAgainstExpected([{ referenceCount: 12, referenceExposure: 600, exposure: 300, count: 1 }], 0.95)
 *   // counted 1, expected 6, ratio 0.167 (0.004 to 1.13)
 * Source: indirect standardisation, Breslow and Day 1987, IARC Sci. Publ. 82, chapter 2; limits after Silcocks
 * 1994, J. Epidemiol. Community Health 48:313, and Fay 1999, Communications in Statistics 28:2141.
 */
export function countedAgainstExpected(
	strata: readonly ExpectedStratum[],
	confidence: number,
	clustering: Clustering = {}
): CountedAgainstExpected {
	strata.forEach(checkStratum);
	checkConfidence('confidence', confidence);
	const compared = strata.filter((s) => s.referenceExposure > 0 && s.exposure > 0);
	const sum = (from: readonly ExpectedStratum[], of: (s: ExpectedStratum) => number) =>
		from.reduce((total, s) => total + of(s), 0);
	const weight = (s: ExpectedStratum) => s.exposure / s.referenceExposure;
	const ofCounted = Math.max(1, clustering.counted ?? 1);
	const ofReference = Math.max(1, clustering.reference ?? 1);
	const counted = sum(compared, (s) => s.count);
	const expected = sum(compared, (s) => weight(s) * s.referenceCount);
	const variance = ofReference * sum(compared, (s) => weight(s) ** 2 * s.referenceCount);
	const left = strata.filter((s) => !(s.referenceExposure > 0));
	const limits =
		compared.length === 0
			? { ratio: NaN, lower: 0, upper: Infinity }
			: weightedCountRatio(
					{ total: counted, variance: ofCounted * counted, heaviest: ofCounted },
					{ total: expected, variance, heaviest: ofReference * Math.max(...compared.map(weight)) },
					confidence
				);
	return {
		counted,
		expected,
		expectedSd: Math.sqrt(variance),
		...limits,
		exposureLeftOut: sum(left, (s) => s.exposure),
		countLeftOut: sum(left, (s) => s.count),
		exposureCompared: sum(compared, (s) => s.exposure),
		strataCompared: compared.length
	};
}

function checkStratum(stratum: ExpectedStratum): void {
	checkCount('referenceCount', stratum.referenceCount);
	checkExposure('referenceExposure', stratum.referenceExposure);
	checkExposure('exposure', stratum.exposure);
	checkCount('count', stratum.count);
	if (stratum.count > 0 && stratum.exposure === 0)
		throw new RangeError(`count must be 0 where exposure is 0; it is ${stratum.count}`);
	if (stratum.referenceCount > 0 && stratum.referenceExposure === 0)
		throw new RangeError(
			`referenceCount must be 0 where referenceExposure is 0; it is ${stratum.referenceCount}`
		);
}
