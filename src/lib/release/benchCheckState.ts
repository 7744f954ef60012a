import { holds, notYet } from './criterionState';
import type { CriterionState, TestEvidence } from './criteria';

/** Whether a bench check stands. A written override lets a test begin; it does not let a batch go out. */
export function benchCheckState({ benchCheck }: Pick<TestEvidence, 'benchCheck'>): CriterionState {
	if (benchCheck === 'recorded') return holds('bench check', 'A bench check is recorded.');
	return notYet(
		'bench check',
		benchCheck === 'overridden'
			? 'The bench check was overridden in writing; a release needs the check itself.'
			: 'No bench check is recorded.',
		'Static drive torque, free coasting, no creep of the ring: check and record it.'
	);
}
