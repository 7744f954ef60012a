import type { NumberWords } from '$lib/release/criteria';
import { releaseState, type ReleaseState } from '$lib/release/releaseState';
import { findBuild } from '../hardware/builds';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { listCriteria } from './releaseCriteria';
import { testEvidence } from './testEvidence';

/** How many criteria of a build hold, and what comes next. */
export interface CriteriaStanding {
	readonly state: ReleaseState['state'];
	readonly hold: number;
	readonly asked: number;
	/** names of those that fail or are out of reach */
	readonly failing: readonly string[];
}

/**
 * Kept while neither rides nor anything that a person writes down changes: the hardware of a build is no evidence of
 * its rides, but every write leaves its trail.
 *
 * @returns null before criteria were set
 */
export function criteriaStanding(
	ledger: Ledger,
	buildId: number,
	words: NumberWords
): CriteriaStanding | null {
	const lastWrite = ledger.database
		.prepare<[], number>('SELECT coalesce(max(id), 0) FROM trail')
		.pluck()
		.get()!;
	return remember(ledger, `criteria of build ${buildId} after ${lastWrite}`, () => {
		const [current] = listCriteria(ledger, buildId);
		if (!current) return null;
		const evidence = testEvidence(ledger, findBuild(ledger, buildId), current);
		const { state, criteria } = releaseState(current.criteria, evidence, words);
		return {
			state,
			hold: criteria.filter((criterion) => criterion.state === 'holds').length,
			asked: criteria.length,
			failing: criteria
				.filter((criterion) => criterion.state === 'fails' || criterion.state === 'out of reach')
				.map(({ name }) => name)
		};
	});
}
