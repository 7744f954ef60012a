import { holds, notYet } from './criterionState';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

/** with less comparable distance than this, the comparison speaks about too little of the test */
const LEAST_COMPARABLE_SHARE = 0.5;

/**
 * Whether the counted slips stay below the wanted share of those that the old build would have had at the
 * same torque and age, limits included. Asked for only where the criteria name a share.
 *
 * @returns null when the criteria do not ask for it
 */
export function expectedState(
	criteria: Pick<ReleaseCriteria, 'expectedRatioAtMost'>,
	{ expected }: Pick<TestEvidence, 'expected'>,
	words: NumberWords
): CriterionState | null {
	const name = 'counted against expected';
	const limit = criteria.expectedRatioAtMost;
	if (limit === null) return null;
	const asked = `At most ${words.set(limit)} times the slips that the old build would have had on the same kilometres`;
	if (!expected)
		return notYet(
			name,
			`${asked}; nothing can be compared yet.`,
			'Rides at torque and age that the old build knew.'
		);
	const has = Number.isFinite(expected.ratioUpper)
		? `its ${words.share(expected.confidence)} limits reach ${words.figure(expected.ratioUpper)}`
		: 'no upper limit can be given, because no confirmed slip of the old build lies there to expect by';
	const sentence = `${asked}; ${has}, on ${words.share(expected.comparableShare)} of the observed distance.`;
	if (expected.comparableShare < LEAST_COMPARABLE_SHARE)
		return notYet(
			name,
			sentence,
			`At least ${words.share(LEAST_COMPARABLE_SHARE)} of the distance at torque and age that the old build knew.`
		);
	if (expected.ratioUpper <= limit) return holds(name, sentence);
	return Number.isFinite(expected.ratioUpper)
		? notYet(name, sentence, 'More comparable distance, if nothing more counts on it.')
		: notYet(name, sentence, 'Review of the events of the old build: only its confirmed slips are expected.');
}
