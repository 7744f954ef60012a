import { holds, notYet } from './criterionState';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

/**
 * Whether the observed distance above the torque at which the old build slipped is there: a build that was
 * only ridden gently has not been tried.
 *
 * @returns null when the criteria ask for no such distance: what is not asked for does not hold
 */
export function hardTorqueState(
	criteria: Pick<ReleaseCriteria, 'hardTorqueNm' | 'observedMAboveHardTorque'>,
	{ observedMAboveHardTorque: has }: Pick<TestEvidence, 'observedMAboveHardTorque'>,
	words: NumberWords
): CriterionState | null {
	const wanted = criteria.observedMAboveHardTorque;
	if (wanted === 0) return null;
	const above = `above ${words.number(criteria.hardTorqueNm)} Nm at the hub`;
	const sentence = `${words.kmSet(wanted)} observed ${above} asked for; there are ${words.km(has)}.`;
	if (has >= wanted) return holds('high torque', sentence);
	return notYet(
		'high torque',
		sentence,
		`${words.km(wanted - has)} ${above}: on a bench, or seated on a climb closed to traffic, never by provoking a slip in a sprint.`
	);
}
