import type { CriterionName, CriterionState } from './criteria';

export function holds(name: CriterionName, sentence: string): CriterionState {
	return { name, state: 'holds', sentence, stillTakes: null };
}

export function notYet(name: CriterionName, sentence: string, stillTakes: string): CriterionState {
	return { name, state: 'not yet', sentence, stillTakes };
}

export function fails(name: CriterionName, sentence: string): CriterionState {
	return { name, state: 'fails', sentence, stillTakes: null };
}

export function outOfReach(name: CriterionName, sentence: string): CriterionState {
	return { name, state: 'out of reach', sentence, stillTakes: null };
}
