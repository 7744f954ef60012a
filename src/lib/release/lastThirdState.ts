import { poissonRateUpperBound } from '$lib/reliability/poissonRateUpperBound';
import { countedSlips } from './counted';
import { holds, notYet } from './criterionState';
import { roughly } from './roughly';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

const UNIT_M = 1_000_000;

/**
 * Whether the last third of the distance by itself keeps the rate: a build that wears into slipping passes
 * on its first kilometres. Too few kilometres to say is not "holds".
 */
export function lastThirdState(
	criteria: Pick<ReleaseCriteria, 'rateAtMostPerThousandKm' | 'confidence'>,
	{ lastThird }: Pick<TestEvidence, 'lastThird'>,
	words: NumberWords
): CriterionState {
	const { rateAtMostPerThousandKm: limit, confidence } = criteria;
	const upper = poissonRateUpperBound(lastThird.slips, lastThird.observedM / UNIT_M, confidence);
	const found = countedSlips(lastThird.slips, lastThird.confirmed, words);
	const bound = Number.isFinite(upper)
		? `at most ${words.figure(upper)} per 1000 observed km (one-sided, ${words.share(confidence)})`
		: 'no bound can be given';
	const sentence = `Fewer than ${words.set(limit)} slips per 1000 observed km over the last third: on the ${words.km(lastThird.observedM)} of it ${found}; ${bound}.`;
	if (upper <= limit) return holds('last third', sentence);
	const neededM = lastThird.observedM * (upper / limit);
	return notYet(
		'last third',
		sentence,
		lastThird.observedM > 0
			? `About ${words.km(roughly(3 * (neededM - lastThird.observedM)))} more observed in all, if nothing more counts.`
			: 'Observed distance; nothing was observed yet.'
	);
}
