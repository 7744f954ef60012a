import type { CriteriaVersion, PlannerView } from '$lib/server';

const km = (metres: number) => String(Math.round(metres / 100) / 10);
const percent = (share: number) => String(Math.round(share * 1000) / 10);

/** The fields of the form as text: of the version that stands, or what the planner would begin with. */
export function criteriaFields(
	current: CriteriaVersion | null,
	{ question, answer }: PlannerView
): Record<string, string> {
	if (!current)
		return {
			rate: String(question.rateAtMostPerThousandKm),
			confidence: percent(question.confidence),
			plan: 'fixed',
			perWheelKm: String(Math.ceil(answer.observedMPerWheel / 1000)),
			allowed: String(question.slipsAllowed),
			risk: '10',
			wheels: String(question.wheels),
			riders: '2',
			wetKm: '0',
			dryKm: '0',
			stopAt: '360'
		};
	const { criteria, referenceBuildId } = current;
	const { plan } = criteria;
	return {
		rate: String(criteria.rateAtMostPerThousandKm),
		confidence: percent(criteria.confidence),
		plan: plan.kind,
		...(plan.kind === 'fixed'
			? { perWheelKm: km(plan.observedMPerWheel), allowed: String(plan.slipsAllowed), risk: '10' }
			: {
					good: String(plan.goodPerThousandKm),
					risk: percent(plan.riskOfFailingGood),
					longestKm: km(plan.longestObservedM)
				}),
		wheels: String(criteria.wheels),
		riders: String(criteria.riders),
		reference: String(referenceBuildId ?? ''),
		expected: criteria.expectedRatioAtMost === null ? '' : String(criteria.expectedRatioAtMost),
		hardTorque: String(criteria.hardTorqueNm),
		hardKm: km(criteria.observedMAboveHardTorque),
		wetKm: km(criteria.observedMWet),
		dryKm: km(criteria.observedMDry),
		plannedLifeKm: criteria.plannedLifeM === null ? '' : km(criteria.plannedLifeM),
		stopAt: String(criteria.stopAtCrankDeg)
	};
}
