import type { TwoRisks } from './fixedPlan';
import { sequentialPlan, type SequentialPlan } from './sequentialPlan';
import { sequentialPlanRisks, type SequentialRisks } from './sequentialPlanRisks';

export interface KeptSequentialPlan {
	readonly plan: SequentialPlan;
	/** what the plan does at the good and at the bad rate, computed exactly */
	readonly atGoodRate: SequentialRisks;
	readonly atBadRate: SequentialRisks;
}

/**
 * A sequential plan whose TRUE risks are at most those asked for. Wald's lines are an approximation, and cutting off
 * moves the risks further: here the lines are drawn apart until the exact computation agrees.
 *
 * @param risks rates to tell apart and the risks allowed
 * @param longestExposure where the plan is cut off; left out: 1.5 times the fixed plan of the same risks. Too short a
 *   one cannot keep both risks
 * @returns plan and what it does; null when none was found, as when the fixed plan allows hardly an event: then the
 *   fixed plan is the one to take
 * @throws RangeError for rates or risks that cannot be told apart, or a longest exposure that is not above 0
 * @example sequentialPlanKeepingRisks(risks)?.atBadRate.pass // at most the consumer's risk
 * Source: exact risks of `sequentialPlanRisks`; the search is ours.
 */
export function sequentialPlanKeepingRisks(
	risks: TwoRisks,
	longestExposure?: number
): KeptSequentialPlan | null {
	const first = sequentialPlan(risks, longestExposure);
	if (first === null) return null;
	let { producerRisk, consumerRisk } = risks;
	for (let round = 0; round < 80; round++) {
		const plan = sequentialPlan({ ...risks, producerRisk, consumerRisk }, first.longestExposure);
		if (plan === null) return null;
		const atGoodRate = sequentialPlanRisks(plan, risks.goodRate);
		const atBadRate = sequentialPlanRisks(plan, risks.badRate);
		const tooOftenFailed = atGoodRate.fail > risks.producerRisk;
		const tooOftenPassed = atBadRate.pass > risks.consumerRisk;
		// the plan keeps the risks asked for in its own record, not those that its lines were drawn with
		const kept = { ...plan, producerRisk: risks.producerRisk, consumerRisk: risks.consumerRisk };
		if (!tooOftenFailed && !tooOftenPassed) return { plan: kept, atGoodRate, atBadRate };
		if (tooOftenFailed) producerRisk *= 0.96;
		if (tooOftenPassed) consumerRisk *= 0.96;
	}
	return null;
}
