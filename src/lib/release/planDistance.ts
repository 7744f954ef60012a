import { acceptanceProbability } from '$lib/reliability/acceptanceProbability';
import { demonstrationExposure } from '$lib/reliability/demonstrationExposure';

const UNIT_M = 1_000_000;

export interface PlanQuestion {
	/** slips per 1000 observed km that must not be reached, > 0 */
	readonly rateAtMostPerThousandKm: number;
	/** one-sided, 0 to 1 */
	readonly confidence: number;
	readonly slipsAllowed: number;
	readonly wheels: number;
	/** observed metres that the programme collects in a week, all wheels together; 0 = not known */
	readonly observedMPerWeek: number;
	/** observed metres / ridden metres; 0 = not known */
	readonly observedShare: number;
	/** so many slips may stand for one that is found, at least 1; null = not known */
	readonly slipsBehindOne: number | null;
}

/** What a fixed plan takes and how often it decides wrongly. */
export interface PlanAnswer {
	readonly observedM: number;
	readonly observedMPerWheel: number;
	/** to keep the rate also with the slips that are not found; null while their share is not known */
	readonly observedMWithNotFound: number | null;
	/** ridden metres for it; null while the observed share is not known */
	readonly riddenM: number | null;
	/** null while the pace is not known */
	readonly weeks: number | null;
	/** chance that a build passes whose true rate is so many times the rate that must not be reached */
	readonly passes: readonly { readonly timesTheRate: number; readonly chance: number }[];
}

/** multiples of the rate that are shown: a good build must be far better than the rate to pass for sure */
const TIMES = [0.05, 0.1, 0.25, 0.5, 1, 2] as const;

/**
 * What it takes to show a rate, before the test.
 *
 * @example planDistance({ rateAtMostPerThousandKm: 10, confidence: 0.95, slipsAllowed: 0, wheels: 1, ... })
 * // 300 km: so much without a slip bounds the rate at 10 per 1000 km, and no less
 * Source: demonstrationExposure, acceptanceProbability (src/lib/reliability).
 */
export function planDistance(question: PlanQuestion): PlanAnswer {
	const { rateAtMostPerThousandKm: rate, confidence, slipsAllowed, wheels } = question;
	const exposure = demonstrationExposure(rate, confidence, slipsAllowed);
	const observedM = exposure * UNIT_M;
	return {
		observedM,
		observedMPerWheel: observedM / wheels,
		observedMWithNotFound: question.slipsBehindOne === null ? null : observedM * question.slipsBehindOne,
		riddenM: question.observedShare > 0 ? observedM / question.observedShare : null,
		weeks: question.observedMPerWeek > 0 ? observedM / question.observedMPerWeek : null,
		passes: TIMES.map((timesTheRate) => ({
			timesTheRate,
			chance: acceptanceProbability(timesTheRate * rate, exposure, slipsAllowed)
		}))
	};
}
