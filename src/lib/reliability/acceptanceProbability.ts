import { checkCount, checkExposure } from './checks';
import { poissonAtMost } from './poissonProbability';

/**
 * The chance that a fixed plan passes when the true rate is this one (its operating characteristic).
 *
 * @param rate true events per unit of exposure, >= 0
 * @param exposure of the plan, >= 0
 * @param allowedEvents the plan passes with at most so many
 * @returns chance to pass, 0 to 1
 * @throws RangeError for arguments outside those ranges
 * @example acceptanceProbability(0.002, 1500, 0) // 0.0498
 * Source: Poisson distribution; NIST/SEMATECH e-Handbook 8.3.1.1; IEC 61124.
 */
export function acceptanceProbability(rate: number, exposure: number, allowedEvents: number): number {
	checkExposure('rate', rate);
	checkExposure('exposure', exposure);
	checkCount('allowedEvents', allowedEvents);
	return poissonAtMost(allowedEvents, rate * exposure);
}
