import { counted } from './counted';
import { holds, notYet } from './criterionState';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';

/**
 * Whether enough wheels took part. Under a fixed plan a wheel takes part once it has collected its own
 * distance: many kilometres of one wheel say nothing about the others.
 */
export function wheelsState(
	criteria: Pick<ReleaseCriteria, 'plan' | 'wheels'>,
	{ wheels }: Pick<TestEvidence, 'wheels'>,
	words: NumberWords
): CriterionState {
	const wantedM = criteria.plan.kind === 'fixed' ? criteria.plan.observedMPerWheel : 0;
	const done = wheels.filter(({ observedM }) => observedM > 0 && observedM >= wantedM);
	const each =
		wantedM > 0 ? ` with at least ${words.kmSet(wantedM)} observed each` : ' with observed distance';
	const sentence = `${counted(criteria.wheels, 'wheel', 'wheels', words)} asked for${each}; ${done.length === 0 ? 'none has it yet' : `${words.number(done.length)} ${done.length === 1 ? 'has' : 'have'} it`}.`;
	if (done.length >= criteria.wheels) return holds('wheels', sentence);
	const under = wheels
		.filter((wheel) => !done.includes(wheel))
		.sort((a, b) => b.observedM - a.observedM)
		.slice(0, criteria.wheels - done.length)
		// who takes part is chosen by the distance, told in the order of the names
		.sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));
	const parts = under.map(({ name, observedM }) =>
		wantedM > 0 ? `${words.km(wantedM - observedM)} on ${name}` : `observed distance on ${name}`
	);
	const unknown = criteria.wheels - done.length - under.length;
	if (unknown > 0) parts.push(`${counted(unknown, 'more wheel', 'more wheels', words)} of this build`);
	return notYet('wheels', sentence, `${parts.join(', ')}.`);
}
