import type { NumberWords } from '$lib/release/criteria';
import { evidenceOfBuilds } from '../evidence/buildEvidence';
import { lifeOfBuild } from '../evidence/lifeOfBuild';
import { listBuildRecords } from '../hardware/builds';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { criteriaStanding, type CriteriaStanding } from '../release/criteriaStanding';

/** What the programme tells of a build beside its figures: how its slips went on, and how its criteria stand. */
export interface ProgrammeStory {
	readonly buildId: number;
	/** mean slips of one wheel by its distance on the build, metres; steps, everything found and not rejected */
	readonly curve: readonly { readonly atM: number; readonly value: number }[];
	/** the farthest that one of its wheels has run, metres */
	readonly endM: number;
	/** null before criteria were set */
	readonly criteria: CriteriaStanding | null;
}

/** as many steps as a small curve can show */
const MOST_STEPS = 120;

/** One story a build, in the order of the programme. */
export function programmeStories(ledger: Ledger, words: NumberWords): readonly ProgrammeStory[] {
	const builds = listBuildRecords(ledger);
	const lives = remember(ledger, 'programme curves', () =>
		evidenceOfBuilds(ledger, builds).map((evidence) => ({
			curve: thinned(lifeOfBuild(evidence, { unit: 'slips', unreviewed: 'slip' }).curve),
			endM: Math.max(0, ...evidence.wheels.map(({ endM }) => endM))
		}))
	);
	return builds.map(({ id }, place) => ({
		buildId: id,
		curve: lives[place].curve,
		endM: lives[place].endM,
		criteria: criteriaStanding(ledger, id, words)
	}));
}

function thinned<Step extends { atM: number; value: number }>(steps: readonly Step[]) {
	const every = Math.ceil(steps.length / MOST_STEPS);
	return steps
		.filter((_, place) => place % every === 0 || place === steps.length - 1)
		.map(({ atM, value }) => ({ atM, value }));
}
