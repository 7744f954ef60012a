import { holds, notYet } from './criterionState';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

/**
 * Whether both wet and dry kilometres are there. Rides of which nobody said are neither.
 *
 * @returns null when the criteria ask for neither: what is not asked for does not hold
 */
export function wetAndDryState(
	criteria: Pick<ReleaseCriteria, 'observedMWet' | 'observedMDry'>,
	evidence: Pick<TestEvidence, 'observedMWet' | 'observedMDry'>,
	words: NumberWords
): CriterionState | null {
	if (criteria.observedMWet === 0 && criteria.observedMDry === 0) return null;
	const asked = `${words.kmSet(criteria.observedMWet)} wet and ${words.kmSet(criteria.observedMDry)} dry observed asked for`;
	const sentence = `${asked}; there are ${words.km(evidence.observedMWet)} and ${words.km(evidence.observedMDry)}.`;
	const wet = criteria.observedMWet - evidence.observedMWet;
	const dry = criteria.observedMDry - evidence.observedMDry;
	if (wet <= 0 && dry <= 0) return holds('wet and dry', sentence);
	const parts = [wet > 0 ? `${words.km(wet)} wet` : '', dry > 0 ? `${words.km(dry)} dry` : ''].filter(
		Boolean
	);
	return notYet(
		'wet and dry',
		sentence,
		`${parts.join(' and ')}, or an answer on rides where it was not said.`
	);
}
