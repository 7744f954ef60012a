import { poissonRateUpperBound } from '$lib/reliability/poissonRateUpperBound';
import { counted } from './counted';
import { holds, notYet } from './criterionState';
import { roughly } from './roughly';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

const UNIT_M = 1_000_000;

/**
 * Whether the rate is kept also when the slips are added that the recordings of this test would not have shown:
 * devices on which fewer are found than elsewhere must not make a build look better. Both bounds, that of the rate
 * and that of the slips behind each found one, are taken at their upper end, which is on the safe side.
 */
export function notFoundState(
	criteria: Pick<ReleaseCriteria, 'rateAtMostPerThousandKm' | 'confidence'>,
	evidence: Pick<TestEvidence, 'wheels' | 'slipsAtObservedM' | 'notFound'>,
	words: NumberWords
): CriterionState {
	const { rateAtMostPerThousandKm: limit, confidence } = criteria;
	const { ridesWaiting, factor } = evidence.notFound;
	const asked = `Fewer than ${words.set(limit)} slips per 1000 observed km also with the slips that these rides would not have shown`;
	if (ridesWaiting > 0)
		return notYet(
			'slips not found',
			`${asked}; slips are still being put into ${counted(ridesWaiting, 'ride', 'rides', words)} to learn how many are found again.`,
			'A while: it goes on by itself.'
		);
	if (!factor)
		return notYet(
			'slips not found',
			`${asked}; too few could be put into its rides to learn how many are found again.`,
			'More observed distance.'
		);
	const observedM = evidence.wheels.reduce((sum, wheel) => sum + wheel.observedM, 0);
	const found = poissonRateUpperBound(evidence.slipsAtObservedM.length, observedM / UNIT_M, confidence);
	const upper = found * factor.upper;
	const bound = Number.isFinite(upper)
		? `at most ${words.figure(upper)} per 1000 observed km (one-sided, ${words.share(confidence)})`
		: 'no bound can be given';
	const sentence = `${asked}; of ${counted(factor.put, 'slip', 'slips', words)} put into them ${words.number(factor.found)} were found again, so that one found may stand for ${words.figure(factor.upper)}: ${bound}.`;
	if (upper <= limit) return holds('slips not found', sentence);
	return notYet(
		'slips not found',
		sentence,
		Number.isFinite(upper)
			? `About ${words.km(roughly(observedM * (upper / limit - 1)))} more observed, if nothing more counts.`
			: 'Observed distance; nothing was observed yet.'
	);
}
