import { counted } from './counted';
import { holds, notYet } from './criterionState';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

/** Whether enough riders took part: one rider's way of pressing is not everybody's. */
export function ridersState(
	criteria: Pick<ReleaseCriteria, 'riders'>,
	evidence: Pick<TestEvidence, 'riders'>,
	words: NumberWords
): CriterionState {
	const sentence = `${counted(criteria.riders, 'rider', 'riders', words)} asked for; ${evidence.riders === 0 ? 'none has' : evidence.riders === 1 ? '1 has' : `${words.number(evidence.riders)} have`} counted rides.`;
	const missing = criteria.riders - evidence.riders;
	if (missing <= 0) return holds('riders', sentence);
	return notYet(
		'riders',
		sentence,
		`${counted(missing, 'more rider', 'more riders', words)}; a ride without a named rider counts for none.`
	);
}
