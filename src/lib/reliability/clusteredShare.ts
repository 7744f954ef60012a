/** One cluster of trials: how many were made and met with success, and what each of them stands for. */
export interface TrialUnit {
	/** > 0 */
	readonly weight: number;
	readonly tried: number;
	readonly found: number;
}

export interface ClusteredShare {
	/** 0 to 1; NaN without trials */
	readonly share: number;
	/** variance of the share: the larger one of between clusters and of single trials */
	readonly variance: number;
	/** as many equally weighted trials would tell as much */
	readonly effectiveTrials: number;
}

/**
 * The share of successes over clusters of trials that stand for unequal amounts: a ratio of weighted sums. Trials
 * of one cluster may go together, so the variance is that between clusters where it is the larger one; the other
 * is binomial with half a success added, so that "all of them" is not taken for certain.
 *
 * @param units weight > 0, 0 <= found <= tried
 * @example clusteredShare([{ weight: 1, tried: 10, found: 8 }]) // share 0.8, effectiveTrials 10
 * Source: Cochran 1977, Sampling Techniques, 3rd ed., 6.3 (ratio estimate) and Kish 1965, Survey Sampling, 11.7
 * (effective size under weights).
 */
export function clusteredShare(units: readonly TrialUnit[]): ClusteredShare {
	const used = units.filter(({ tried }) => tried > 0);
	const sum = (pick: (unit: TrialUnit) => number) => used.reduce((total, unit) => total + pick(unit), 0);
	for (const { weight, tried, found } of used)
		if (!(weight > 0 && found >= 0 && found <= tried))
			throw new RangeError(`a unit of ${tried} trials has weight ${weight} and ${found} successes`);
	const all = sum(({ weight, tried }) => weight * tried);
	if (all === 0) return { share: NaN, variance: NaN, effectiveTrials: 0 };
	const share = sum(({ weight, found }) => weight * found) / all;
	const effectiveTrials = all ** 2 / sum(({ weight, tried }) => weight ** 2 * tried);
	const guarded = (share * effectiveTrials + 0.5) / (effectiveTrials + 1);
	const single = (guarded * (1 - guarded)) / effectiveTrials;
	const count = used.length;
	const between =
		count > 1
			? ((count / (count - 1)) * sum(({ weight, tried, found }) => (weight * (found - share * tried)) ** 2)) /
				all ** 2
			: 0;
	return { share, variance: Math.max(single, between), effectiveTrials };
}
