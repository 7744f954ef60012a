import { holds, notYet } from './criterionState';
import type { CriterionState, TestEvidence } from './criteria';

/** Whether the design is frozen and the hubs are of production parts: what was tested must be what is made. */
export function designState({ design }: Pick<TestEvidence, 'design'>): CriterionState {
	const missing = [
		design.frozen ? '' : 'freeze the build, so that its parts can no longer change',
		...design.handFittedParts.map((part) => `replace ${part}, fitted by hand, by a part as produced`),
		...(design.partsWithoutBatch.length > 0
			? [`record the batch of ${design.partsWithoutBatch.join('; ')}`]
			: [])
	].filter(Boolean);
	if (missing.length === 0)
		return holds('design', 'The build is frozen and made of parts as produced, with their batches.');
	const [first, ...others] = missing.join('; ');
	return notYet(
		'design',
		'A frozen build of parts as produced, with their batches, is asked for.',
		`${first.toUpperCase()}${others.join('')}.`
	);
}
