import type { BuildAgainstBuild } from '$lib/server';

/** The builds as the chart of mean slips takes them. */
export function ageCurves({ builds }: BuildAgainstBuild) {
	return builds.map(({ name, life, endM }) => ({ name, points: life.curve, gaps: life.gaps, endM }));
}
