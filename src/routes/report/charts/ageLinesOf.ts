import type { BuildAgainstBuild } from '$lib/server';
import type { DrawnLine } from '$lib/server/views';

/** The step lines as their chart takes them: one a build and wheel, dashed by build. */
export function ageLinesOf(lines: readonly DrawnLine[], { builds }: BuildAgainstBuild) {
	return lines.map((line) => ({
		...line,
		key: `${line.buildId}-${line.wheelId}`,
		dash: builds.findIndex(({ id }) => id === line.buildId)
	}));
}
