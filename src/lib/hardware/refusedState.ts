/** How far a build has come. */
export type BuildState = 'draft' | 'bench-checked' | 'in test' | 'released' | 'withdrawn';

/** What the newest bench check that still holds says; null = there is none. */
export type BenchEvidence = 'passed' | 'failed' | 'override' | null;

const FROM: Readonly<Record<BuildState, readonly BuildState[]>> = {
	draft: ['bench-checked', 'in test', 'withdrawn'],
	'bench-checked': ['draft', 'in test', 'withdrawn'],
	'in test': ['draft', 'released', 'withdrawn'],
	released: ['withdrawn'],
	withdrawn: ['draft']
};

/**
 * Why a build may not go from one state to another. It is ridden only after a bench check that was passed
 * or a written override, and released only by the release record.
 *
 * @param from the state now
 * @param to the state wanted
 * @param bench what the newest bench check says that still holds
 * @param byReleaseRecord whether the signed release record asks
 * @returns one plain sentence; null when it may
 * @example refusedState('draft', 'in test', null, false)
 *   // 'A build is tested only after a bench check that was passed, or with a written override.'
 * Source: common practice, no source.
 */
export function refusedState(
	from: BuildState,
	to: BuildState,
	bench: BenchEvidence,
	byReleaseRecord: boolean
): string | null {
	if (from === to) return `This build is ${to} already.`;
	if (to === 'released' && !byReleaseRecord) return 'A build is released by the signed release record only.';
	if (!FROM[from].includes(to)) return `A build that is ${from} cannot become ${to}.`;
	if (to === 'bench-checked' && bench !== 'passed')
		return 'A build is bench-checked when its newest bench check was passed.';
	if (to === 'in test' && bench === 'failed')
		return 'The newest bench check of this build was not passed: mend it and check it again before anybody rides it.';
	if (to === 'in test' && bench === null)
		return 'A build is tested only after a bench check that was passed, or with a written override.';
	return null;
}
