import { holds, notYet } from './criterionState';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

/** Whether enough riders took part: one rider's way of pressing is not everybody's. */
export function ridersState(
	criteria: Pick<ReleaseCriteria, 'riders'>,
	evidence: Pick<TestEvidence, 'riders'>,
	words: NumberWords
): CriterionState {
	const sentence = `${words.number(criteria.riders)} riders asked for; ${words.number(evidence.riders)} have counted rides.`;
	const missing = criteria.riders - evidence.riders;
	if (missing <= 0) return holds('riders', sentence);
	return notYet(
		'riders',
		sentence,
		`${words.number(missing)} more ${missing === 1 ? 'rider' : 'riders'}; a ride without a named rider counts for none.`
	);
}
