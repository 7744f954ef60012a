import { FEATURE_NAMES } from './candidateFeatures';

const index = (name: string) => FEATURE_NAMES.indexOf(name);
const CAREFUL = index('careful deg');
const NOISE_UNITS = index('careful deg in local noise');
const CADENCE_ONLY = index('deg against cadence around');
const LEAST_POWER = index('least power of before');
const GEARS = index('deg against followed gears');

/**
 * Strength of the signs that a candidate is a slip, by rule of thumb (first version).
 *
 * @param features numbers in the order of FEATURE_NAMES
 * @returns 0 to 1
 */
export function scoreCandidate(features: Float64Array): number {
	const leastPower = features[LEAST_POWER];
	const size = Math.min(features[CAREFUL], features[CADENCE_ONLY] + 15, features[GEARS] + 15);
	const collapse = Number.isNaN(leastPower) ? -1.5 : 4 * (0.75 - leastPower);
	const logit = -4 + 0.05 * size + 0.25 * Math.min(12, features[NOISE_UNITS]) + collapse;
	return 1 / (1 + Math.exp(-logit));
}
