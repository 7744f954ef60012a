import { holds, notYet } from './criterionState';
import type { CriterionState, NumberWords, TestEvidence } from './criteria';

/** Whether nothing reported from the road is open. */
export function incidentsState(
	{ openIncidents }: Pick<TestEvidence, 'openIncidents'>,
	words: NumberWords
): CriterionState {
	if (openIncidents === 0) return holds('incidents', 'No incident of this build is open.');
	return notYet(
		'incidents',
		`Open incidents: ${words.number(openIncidents)}.`,
		'Open the hub, find out, and close each with its reason.'
	);
}
