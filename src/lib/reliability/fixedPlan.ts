import { acceptanceProbability } from './acceptanceProbability';
import { checkPositive, checkRisk } from './checks';
import { demonstrationExposure } from './demonstrationExposure';

/** What a plan must tell apart, and how often it may be wrong. */
export interface TwoRisks {
	/** a rate that should pass, > 0 */
	readonly goodRate: number;
	/** a rate that should fail, above the good one */
	readonly badRate: number;
	/** chance to fail at the good rate */
	readonly producerRisk: number;
	/** chance to pass at the bad rate */
	readonly consumerRisk: number;
}

export interface FixedPlan {
	readonly exposure: number;
	readonly allowedEvents: number;
	/** true risks of this plan: at most those asked for */
	readonly producerRisk: number;
	readonly consumerRisk: number;
	/** with the same number allowed, up to this exposure both risks still hold */
	readonly longestExposure: number;
}

/** beyond so many events a plan is no plan for a workshop */
const MOST_EVENTS = 2000;

/** Refuses rates and risks that no plan can tell apart. */
export function checkTwoRisks({ goodRate, badRate, producerRisk, consumerRisk }: TwoRisks): void {
	checkPositive('goodRate', goodRate);
	checkPositive('badRate', badRate);
	checkRisk('producerRisk', producerRisk);
	checkRisk('consumerRisk', consumerRisk);
	if (badRate <= goodRate)
		throw new RangeError(`badRate must be above goodRate; they are ${badRate} and ${goodRate}`);
	if (producerRisk + consumerRisk >= 1)
		throw new RangeError(`the two risks must leave a chance to be right; they add up to 1 or more`);
}

/**
 * The shortest plan of fixed length that keeps both risks: so much exposure, so many events allowed.
 *
 * @param risks rates to tell apart and the risks allowed
 * @returns the plan with its true risks; null when it would allow more than 2000 events
 * @throws RangeError for rates or risks that cannot be told apart
 * @example fixedPlan({ goodRate: 0.001, badRate: 0.0015, producerRisk: 0.1, consumerRisk: 0.1 })
 *   // 32,927 km, 40 events allowed
 * Source: IEC 61124 (fixed-duration plans); NIST/SEMATECH e-Handbook 8.3.1.1; search over the number allowed.
 */
export function fixedPlan(risks: TwoRisks): FixedPlan | null {
	checkTwoRisks(risks);
	const { goodRate, badRate, producerRisk, consumerRisk } = risks;
	for (let allowedEvents = 0; allowedEvents <= MOST_EVENTS; allowedEvents++) {
		const exposure = demonstrationExposure(badRate, 1 - consumerRisk, allowedEvents);
		const longestExposure = demonstrationExposure(goodRate, producerRisk, allowedEvents);
		if (exposure > longestExposure) continue;
		return {
			exposure,
			allowedEvents,
			producerRisk: 1 - acceptanceProbability(goodRate, exposure, allowedEvents),
			consumerRisk: acceptanceProbability(badRate, exposure, allowedEvents),
			longestExposure
		};
	}
	return null;
}
