import { counted } from './counted';
import { holds, notYet } from './criterionState';
import type { CriterionState, NumberWords, TestEvidence } from './criteria';

/** Whether a person has looked at every event and answered every rider mark. */
export function reviewState(
	{ unreviewed, openMarks }: Pick<TestEvidence, 'unreviewed' | 'openMarks'>,
	words: NumberWords
): CriterionState {
	if (unreviewed + openMarks === 0)
		return holds('review', 'Every event was reviewed and every rider mark answered.');
	const events = counted(unreviewed, 'event to review', 'events to review', words);
	const marks = counted(openMarks, 'rider mark to answer', 'rider marks to answer', words);
	const parts = [unreviewed > 0 ? events : '', openMarks > 0 ? marks : ''].filter(Boolean);
	return notYet(
		'review',
		'Every event reviewed and every rider mark answered is asked for.',
		`${parts.join(', ')}.`
	);
}
