import { holds, notYet } from './criterionState';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

/**
 * Whether measured wear stays within its limits over the planned life, each by the lower limit of the
 * distance at which it would reach its own.
 *
 * @returns null when the criteria do not ask for it
 */
export function wearState(
	criteria: Pick<ReleaseCriteria, 'plannedLifeM'>,
	{ wear }: Pick<TestEvidence, 'wear'>,
	words: NumberWords
): CriterionState | null {
	const life = criteria.plannedLifeM;
	if (life === null) return null;
	const asked = `Wear within its limits up to ${words.kmSet(life)}`;
	if (wear.length === 0)
		return notYet('wear', `${asked}; nothing was measured.`, 'Inspections at four distances or more.');
	const short = wear.filter(({ reachesLimitAtLeastM: at }) => at === null);
	const worn = wear.filter(({ reachesLimitAtLeastM: at }) => at !== null && at < life);
	if (worn.length > 0) {
		const each = worn.map(({ name, reachesLimitAtLeastM: at }) => `${name} (${words.km(at ?? 0)})`);
		return notYet(
			'wear',
			`${asked}; the limit may be reached earlier by ${each.join(', ')}.`,
			'More inspections, which narrow the limits, or a part that wears less.'
		);
	}
	if (short.length > 0)
		return notYet(
			'wear',
			`${asked}; too few measurements of ${short.map(({ name }) => name).join(', ')}.`,
			'At least four inspections of each at different distances.'
		);
	return holds(
		'wear',
		`${asked}; so it is for all that was measured: ${wear.map(({ name }) => name).join(', ')}.`
	);
}
