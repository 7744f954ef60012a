import { planDistance, type PlanAnswer, type PlanQuestion } from '$lib/release/planDistance';
import type { Pace } from './releaseView';

export interface PlannerView {
	readonly question: PlanQuestion;
	readonly answer: PlanAnswer;
}

/** What a person may ask the planner; anything else than a number in range is taken as not asked. */
export interface PlannerInput {
	readonly ratePerThousandKm: number | null;
	readonly confidencePercent: number | null;
	readonly slipsAllowed: number | null;
	readonly wheels: number | null;
}

/** What a plan would take, at the pace at which this build was ridden so far. */
export function plannerView(asked: PlannerInput, pace: Pace): PlannerView {
	const within = (value: number | null, least: number, most: number, otherwise: number) =>
		value !== null && value >= least && value <= most ? value : otherwise;
	const question = {
		rateAtMostPerThousandKm: within(asked.ratePerThousandKm, 0.001, 1000, 5),
		confidence: within(asked.confidencePercent, 50, 99.9, 90) / 100,
		slipsAllowed: Math.round(within(asked.slipsAllowed, 0, 100, 0)),
		wheels: Math.round(within(asked.wheels, 1, 1000, Math.max(1, pace.wheels))),
		observedMPerWeek: pace.observedMPerWeek,
		observedShare: pace.observedShare,
		slipsBehindOne: pace.slipsBehindOne
	};
	return { question, answer: planDistance(question) };
}
