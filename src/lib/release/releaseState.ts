import { benchCheckState } from './benchCheckState';
import { buildSheetState } from './buildSheetState';
import type { CriterionState, NumberWords, ReleaseCriteria, TestEvidence } from './criteria';
import { designState } from './designState';
import { expectedState } from './expectedState';
import { fixedPlanState } from './fixedPlanState';
import { hardTorqueState } from './hardTorqueState';
import { incidentsState } from './incidentsState';
import { lastThirdState } from './lastThirdState';
import { notFoundState } from './notFoundState';
import { reviewState } from './reviewState';
import { ridersState } from './ridersState';
import { sequentialPlanState } from './sequentialPlanState';
import { stopRuleState } from './stopRuleState';
import { wearState } from './wearState';
import { wetAndDryState } from './wetAndDryState';
import { wheelsState } from './wheelsState';

export interface ReleaseState {
	/** every criterion that was asked for, the stop rule first */
	readonly criteria: readonly CriterionState[];
	/**
	 * `stopped`: the stop rule or another criterion fails, or one is out of reach; `all hold`: an owner may
	 * sign; `not yet`: the test goes on
	 */
	readonly state: 'stopped' | 'not yet' | 'all hold';
}

/** How a build stands against its criteria. The tool decides nothing: an owner signs, or does not. */
export function releaseState(
	criteria: ReleaseCriteria,
	evidence: TestEvidence,
	words: NumberWords
): ReleaseState {
	const { plan } = criteria;
	const states = [
		stopRuleState(criteria, evidence, words),
		plan.kind === 'fixed'
			? fixedPlanState(criteria, plan, evidence, words)
			: sequentialPlanState(criteria, plan, evidence, words),
		wheelsState(criteria, evidence, words),
		ridersState(criteria, evidence, words),
		expectedState(criteria, evidence, words),
		hardTorqueState(criteria, evidence, words),
		wetAndDryState(criteria, evidence, words),
		lastThirdState(criteria, evidence, words),
		notFoundState(criteria, evidence, words),
		wearState(criteria, evidence, words),
		designState(evidence),
		benchCheckState(evidence),
		reviewState(evidence, words),
		incidentsState(evidence, words),
		buildSheetState(evidence)
	].filter((state) => state !== null);
	const ended = states.some(({ state }) => state === 'fails' || state === 'out of reach');
	return {
		criteria: states,
		state: ended ? 'stopped' : states.every(({ state }) => state === 'holds') ? 'all hold' : 'not yet'
	};
}
