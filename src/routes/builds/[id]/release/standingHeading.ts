import type { CriterionState } from '$lib/server';

/** How many criteria hold and how many do not; what has failed or is out of reach is not put off by a "yet". */
export function standingHeading(criteria: readonly Pick<CriterionState, 'state'>[]): string {
	const left = criteria.filter(({ state }) => state !== 'holds').length;
	const ended = criteria.filter(({ state }) => state === 'fails' || state === 'out of reach').length;
	if (left === 0) return 'Every criterion holds';
	const hold = criteria.length - left;
	const lead = `${hold === 0 ? 'None' : hold} of ${criteria.length} criteria ${hold <= 1 ? 'holds' : 'hold'}`;
	if (ended === 0)
		return hold === 0 ? `${lead} yet` : `${lead}, ${left} ${left === 1 ? 'does' : 'do'} not yet`;
	return `${lead}; by ${ended === left ? (ended === 1 ? 'the other' : 'the others') : `${ended} of the others`} the build does not pass`;
}
