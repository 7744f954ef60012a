import { holds, notYet } from './criterionState';
import type { CriterionState, TestEvidence } from './criteria';

/** Whether the build sheet is complete. */
export function buildSheetState({
	missingOnBuildSheet: missing
}: Pick<TestEvidence, 'missingOnBuildSheet'>): CriterionState {
	if (missing.length === 0) return holds('build sheet', 'The build sheet is complete.');
	return notYet('build sheet', 'The build sheet is not complete.', `Missing: ${missing.join(', ')}.`);
}
