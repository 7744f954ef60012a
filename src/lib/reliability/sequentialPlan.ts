import { checkPositive } from './checks';
import { checkTwoRisks, fixedPlan, type TwoRisks } from './fixedPlan';

/** A plan that may end early on either side, and ends for certain at `longestExposure`. */
export interface SequentialPlan extends TwoRisks {
	/** both lines rise by so many events per unit of exposure */
	readonly slope: number;
	/** pass once events <= slope x exposure + this (it is below 0) */
	readonly passIntercept: number;
	/** fail once events >= slope x exposure + this */
	readonly failIntercept: number;
	readonly longestExposure: number;
	/** at the longest exposure the plan passes with at most so many events, and fails as soon as there are more */
	readonly allowedAtEnd: number;
}

/**
 * A sequential plan between two rates with parallel lines, cut off at a longest exposure. Its true risks are
 * those of `sequentialPlanRisks`, not the nominal ones: cutting off changes them.
 *
 * @param risks rates to tell apart and the nominal risks
 * @param longestExposure where it is cut off; left out: 1.5 times the fixed plan of the same risks
 * @returns the plan; null when no fixed plan of these risks exists
 * @throws RangeError for rates or risks that cannot be told apart, or a longest exposure that is not above 0
 * @example sequentialPlan({ goodRate: 0.001, badRate: 0.003, producerRisk: 0.1, consumerRisk: 0.1 })
 *   // slope 0.00182, intercepts -2 and 2
 * Source: Wald 1947, Sequential Analysis, chapter 3 (Poisson case by the same likelihood ratio); IEC 61124 for
 * cutting off. The cut-off number is the whole number nearest to the middle between the lines.
 */
export function sequentialPlan(risks: TwoRisks, longestExposure?: number): SequentialPlan | null {
	checkTwoRisks(risks);
	if (longestExposure !== undefined) checkPositive('longestExposure', longestExposure);
	const { goodRate, badRate, producerRisk, consumerRisk } = risks;
	const longest = longestExposure ?? 1.5 * (fixedPlan(risks)?.exposure ?? NaN);
	if (Number.isNaN(longest)) return null;
	const logRatio = Math.log(badRate / goodRate);
	const slope = (badRate - goodRate) / logRatio;
	const passIntercept = Math.log(consumerRisk / (1 - producerRisk)) / logRatio;
	const failIntercept = Math.log((1 - consumerRisk) / producerRisk) / logRatio;
	const middle = slope * longest + (passIntercept + failIntercept) / 2;
	// never below what the pass line itself allows at the end
	const allowedAtEnd = Math.max(0, Math.floor(slope * longest + passIntercept), Math.round(middle) - 1);
	return { ...risks, slope, passIntercept, failIntercept, longestExposure: longest, allowedAtEnd };
}
