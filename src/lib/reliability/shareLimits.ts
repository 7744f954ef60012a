import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { checkConfidence, checkCount } from './checks';

export interface ShareLimits {
	/** found / tried; NaN when nothing was tried */
	readonly share: number;
	readonly lower: number;
	readonly upper: number;
}

/**
 * The share of trials that succeeded, with exact two-sided limits: those shares at which as few or as many
 * successes would each come about in half of the remaining cases.
 * The trials must be independent; the limits cover at least the stated confidence.
 *
 * @param found successes, 0 to tried
 * @param tried trials, a whole number, 0 or more
 * @param confidence two-sided, between 0 and 1
 * @returns limits 0 and 1 when nothing was tried
 * @throws RangeError for broken counts, more found than tried, a confidence outside (0, 1)
 * @example shareLimits(0, 20, 0.95).upper // 0.168, which is 1 - 0.025^(1/20)
 * Source: Clopper and Pearson 1934, Biometrika 26:404; checked against R in tests/published.
 */
export function shareLimits(found: number, tried: number, confidence: number): ShareLimits {
	checkCount('found', found);
	checkCount('tried', tried);
	checkConfidence('confidence', confidence);
	if (found > tried) throw new RangeError(`found must be at most tried (${tried}); it is ${found}`);
	const beyond = (1 - confidence) / 2;
	return {
		share: found / tried,
		lower: found === 0 ? 0 : betaQuantile(beyond, found, tried - found + 1),
		upper: found === tried ? 1 : betaQuantile(1 - beyond, found + 1, tried - found)
	};
}
