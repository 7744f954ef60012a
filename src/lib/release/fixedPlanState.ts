import { counted, countedSlips } from './counted';
import { fails, holds, notYet } from './criterionState';
import type { CriterionState, FixedPlan, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

/**
 * How the rate stands under a fixed plan: every wheel collects its distance, and no more slips than
 * allowed may count. All slips since the plan was set count, also those beyond the planned distance, so
 * that riding on can never help. What nobody has reviewed counts as a slip.
 */
export function fixedPlanState(
	criteria: Pick<ReleaseCriteria, 'rateAtMostPerThousandKm' | 'confidence' | 'wheels'>,
	plan: FixedPlan,
	evidence: Pick<TestEvidence, 'wheels' | 'confirmed' | 'unreviewed' | 'slipsAtObservedM'>,
	words: NumberWords
): CriterionState {
	const { observedMPerWheel, slipsAllowed } = plan;
	const slips = evidence.slipsAtObservedM.length;
	const has = evidence.wheels
		.map(({ observedM }) => Math.min(observedM, observedMPerWheel))
		.sort((a, b) => b - a)
		.slice(0, criteria.wheels)
		.reduce((sum, metres) => sum + metres, 0);
	const wanted = criteria.wheels * observedMPerWheel;
	const asked = `Fewer than ${words.set(criteria.rateAtMostPerThousandKm)} slips per 1000 observed km at ${words.share(criteria.confidence)} confidence, shown by ${words.kmSet(observedMPerWheel)} on each of ${counted(criteria.wheels, 'wheel', 'wheels', words)} with ${slipsAllowed === 0 ? 'no slip' : `at most ${words.number(slipsAllowed)} counted`}`;
	const sentence = `${asked}; ${words.km(has)} of ${words.kmSet(wanted)} are there, ${countedSlips(slips, evidence.confirmed, words)}.`;
	if (evidence.confirmed > slipsAllowed) return fails('rate', sentence);
	const left: string[] = [];
	if (slips > slipsAllowed) left.push(`Review of ${counted(evidence.unreviewed, 'event', 'events', words)}`);
	if (has < wanted) left.push(`${words.km(wanted - has)} observed, with no more counted than is allowed`);
	return left.length === 0 ? holds('rate', sentence) : notYet('rate', sentence, `${left.join(', ')}.`);
}
