import type { CriterionState } from '$lib/server';

/** How many criteria do not hold; what has failed or is out of reach is not put off by a "yet". */
export function standingHeading(criteria: readonly Pick<CriterionState, 'state'>[]): string {
	const left = criteria.filter(({ state }) => state !== 'holds').length;
	const ended = criteria.filter(({ state }) => state === 'fails' || state === 'out of reach').length;
	if (left === 0) return 'Every criterion holds';
	const lead = `${left} of ${criteria.length} criteria ${left === 1 ? 'does' : 'do'} not hold`;
	if (ended === 0) return `${lead} yet`;
	return left === ended
		? `${lead}: the build does not pass`
		: `${lead}; by ${ended} of them the build does not pass`;
}
