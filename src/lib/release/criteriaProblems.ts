import { poissonRateUpperBound } from '$lib/reliability/poissonRateUpperBound';
import type { ReleaseCriteria } from './criteria';
import { planLines } from './sequentialCourse';

const UNIT_M = 1_000_000;

/**
 * What is wrong with criteria before they are set, in sentences; empty when nothing is. The chief question
 * is whether the plan can show the rate at all: 300 km without a slip bound it at 10 per 1000 km, so no
 * plan of 300 km can show 5.
 */
export function criteriaProblems(criteria: ReleaseCriteria): string[] {
	const { plan, confidence, rateAtMostPerThousandKm: rate } = criteria;
	const problems: string[] = [];
	const say = (wrong: boolean, sentence: string) => {
		if (wrong) problems.push(sentence);
	};
	say(!(rate > 0 && rate <= 1000), 'The rate must lie above 0 and not above 1000 per 1000 observed km.');
	say(!(confidence >= 0.5 && confidence < 1), 'The confidence must lie between 50 % and 100 %.');
	say(!isCount(criteria.wheels, 1), 'At least one wheel has to take part.');
	say(!isCount(criteria.riders, 1), 'At least one rider has to take part.');
	say(!(criteria.stopAtCrankDeg >= 90), 'The stop rule has to begin at 90 crank degrees or more.');
	const ratio = criteria.expectedRatioAtMost;
	say(
		ratio !== null && !(ratio > 0 && ratio <= 1),
		'Counted against expected must lie above 0 and not above 1.'
	);
	const distances = [
		criteria.observedMAboveHardTorque,
		criteria.observedMWet,
		criteria.observedMDry,
		criteria.plannedLifeM ?? 0
	];
	say(!distances.every((metres) => metres >= 0 && metres <= 1e9), 'Distances must be 0 km or more.');
	say(
		!(criteria.hardTorqueNm >= 0 && criteria.hardTorqueNm <= 500),
		'The torque must lie between 0 and 500 Nm.'
	);
	if (problems.length > 0) return problems;
	if (plan.kind === 'fixed') {
		say(!isCount(plan.slipsAllowed, 0), 'The slips allowed must be a whole number, 0 or more.');
		say(
			!(plan.observedMPerWheel > 0 && plan.observedMPerWheel <= 1e9),
			'The distance per wheel must be above 0 km.'
		);
		if (problems.length > 0) return problems;
		const bound = poissonRateUpperBound(
			plan.slipsAllowed,
			(criteria.wheels * plan.observedMPerWheel) / UNIT_M,
			confidence
		);
		say(
			bound > rate * (1 + 1e-9),
			`This plan cannot show the rate: at its end with the slips allowed the rate is bounded at ${bound.toPrecision(3)}, not at ${rate} per 1000 observed km. Take more distance or allow fewer slips.`
		);
	} else {
		say(
			!(plan.goodPerThousandKm > 0 && plan.goodPerThousandKm < rate),
			'The good rate must lie above 0 and below the rate that must not be reached.'
		);
		say(
			!(plan.riskOfFailingGood > 0 && plan.riskOfFailingGood < 0.5),
			'The risk must lie between 0 and 50 %.'
		);
		say(
			!(plan.longestObservedM > 0 && plan.longestObservedM <= 1e9),
			'The longest distance must be above 0 km.'
		);
		if (problems.length > 0) return problems;
		say(
			planLines(criteria, plan) === null,
			'No plan of this length keeps both risks: let it run longer, or tell rates apart that lie further from each other.'
		);
	}
	return problems;
}

function isCount(value: number, least: number): boolean {
	return Number.isSafeInteger(value) && value >= least && value <= 10_000;
}
