import type { SequentialPlan as PlanLines } from '$lib/reliability/sequentialPlan';
import { sequentialPlanKeepingRisks } from '$lib/reliability/sequentialPlanKeepingRisks';
import { passExposure, sequentialState } from '$lib/reliability/sequentialState';
import type { ReleaseCriteria, SequentialPlan } from './criteria';

const UNIT_M = 1_000_000;

/** How a sequential plan has gone. */
export interface SequentialCourse {
	readonly state: 'pass' | 'fail' | 'continue';
	/** observed metres at which it ended; null while it goes on */
	readonly endedAtM: number | null;
	/** without a further slip it passes at so many observed metres in all; null once it has ended */
	readonly passesAtM: number | null;
}

/**
 * The two lines of the plan, in slips and 1000 observed km, drawn so that its true risks are at most those asked
 * for; null when none of this length keeps both.
 */
export function planLines(
	criteria: Pick<ReleaseCriteria, 'rateAtMostPerThousandKm' | 'confidence'>,
	plan: SequentialPlan
): PlanLines | null {
	const kept = sequentialPlanKeepingRisks(
		{
			goodRate: plan.goodPerThousandKm,
			badRate: criteria.rateAtMostPerThousandKm,
			producerRisk: plan.riskOfFailingGood,
			consumerRisk: 1 - criteria.confidence
		},
		plan.longestObservedM / UNIT_M
	);
	return kept && kept.plan;
}

/**
 * Goes through the slips as they came. The first line that is crossed ends the plan for good: a slip that
 * comes after it has passed, or kilometres after it has failed, do not reopen it. They are watched elsewhere:
 * the stop rule, the last third, the field.
 *
 * @param slipsAtM observed metres, all wheels together, at which slips came, in order
 * @param observedM observed metres so far
 */
export function sequentialCourse(
	lines: PlanLines,
	slipsAtM: readonly number[],
	observedM: number
): SequentialCourse {
	for (let slips = 0; slips <= slipsAtM.length; slips++) {
		const until = slipsAtM[slips] ?? observedM;
		const passesAtM = passExposure(lines, slips) * UNIT_M;
		if (until >= passesAtM) return { state: 'pass', endedAtM: passesAtM, passesAtM: null };
		if (slips === slipsAtM.length) return { state: 'continue', endedAtM: null, passesAtM };
		if (sequentialState(lines, slips + 1, until / UNIT_M).state === 'fail')
			return { state: 'fail', endedAtM: until, passesAtM: null };
	}
	throw new Error('a plan passes, fails or goes on');
}
