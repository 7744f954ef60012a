import { holds, notYet } from './criterionState';
import type { CriterionState, NumberWords, TestEvidence } from './criteria';

/** Whether a person has looked at every event and answered every rider mark. */
export function reviewState(
	{ unreviewed, openMarks }: Pick<TestEvidence, 'unreviewed' | 'openMarks'>,
	words: NumberWords
): CriterionState {
	if (unreviewed + openMarks === 0)
		return holds('review', 'Every event was reviewed and every rider mark answered.');
	const events = `${words.number(unreviewed)} ${unreviewed === 1 ? 'event' : 'events'} to review`;
	const marks = `${words.number(openMarks)} rider ${openMarks === 1 ? 'mark' : 'marks'} to answer`;
	const parts = [unreviewed > 0 ? events : '', openMarks > 0 ? marks : ''].filter(Boolean);
	return notYet(
		'review',
		'Every event reviewed and every rider mark answered is asked for.',
		`${parts.join(', ')}.`
	);
}
