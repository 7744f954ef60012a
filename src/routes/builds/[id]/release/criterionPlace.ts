import type { CriterionState } from '$lib/server';

/** A page on which something can be done about a criterion. */
export interface CriterionPlace {
	readonly href: string;
	readonly name: string;
}

/**
 * Where to do what a criterion still takes; null where nothing but riding helps, or it holds or has failed.
 *
 * @example criterionPlace({ name: 'review', state: 'not yet', stillTakes: '4 events to review.', ... }, 3)?.href // "/review"
 */
export function criterionPlace(
	{ name, state, stillTakes }: CriterionState,
	buildId: number
): CriterionPlace | null {
	if (state !== 'not yet' || stillTakes === null) return null;
	const review = { href: '/review', name: 'Review' };
	switch (name) {
		case 'rate':
		case 'counted against expected':
			return stillTakes.startsWith('Review of') ? review : null;
		case 'review':
			return stillTakes.includes(' to review') ? review : { href: '/answers?question=laps', name: 'Answer' };
		case 'bench check':
			return { href: `/builds/${buildId}#state`, name: 'Bench checks' };
		case 'incidents':
			return { href: `/builds/${buildId}#incidents`, name: 'Incidents' };
		case 'build sheet':
			return { href: `/builds/${buildId}/sheet`, name: 'Build sheet' };
		default:
			return null;
	}
}
