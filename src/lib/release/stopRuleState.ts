import { fails, holds } from './criterionState';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

/** The stop rule: one large confirmed slip or one injury ends the test, whatever the rate says. */
export function stopRuleState(
	criteria: Pick<ReleaseCriteria, 'stopAtCrankDeg'>,
	evidence: Pick<TestEvidence, 'injuries' | 'largestConfirmedCrankDeg'>,
	words: NumberWords
): CriterionState {
	const asked = `No injury or crash, and no confirmed slip of ${words.number(criteria.stopAtCrankDeg)} crank degrees or more`;
	if (evidence.injuries > 0)
		return fails(
			'stop rule',
			`${asked}; somebody crashed or was hurt (${words.number(evidence.injuries)}). Stop the test: nobody rides this build before the cause is known.`
		);
	if (evidence.largestConfirmedCrankDeg >= criteria.stopAtCrankDeg)
		return fails(
			'stop rule',
			`${asked}; one of ${words.number(evidence.largestConfirmedCrankDeg)} was confirmed. Stop the test: nobody rides this build before the cause is known.`
		);
	return holds('stop rule', `${asked}: none so far.`);
}
