import { demonstrationExposure } from '$lib/reliability/demonstrationExposure';
import { unitTotals } from '$lib/reliability/unitCounts';
import { simulateProgramme, type Conditions } from './programme';

/** variance / mean of the counts that each kind of clustering has (worked out from how it is drawn) */
function trueDispersion(clustering: Conditions['clustering'], meanPerOuting: number): number {
	// bursts of geometric size 2.5: mean square 10 over mean 2.5; outings: 1 + coefficient^2 x mean
	if (clustering === 'bursts') return 4;
	return clustering === 'outings' ? 1 + meanPerOuting : 1;
}

/**
 * How often a fixed plan of 90 % confidence is passed although the rate is exactly the target: 10 % was allowed.
 *
 * @param told whether the plan was made with the true dispersion, or for single events
 * @returns share of programmes that passed
 */
export function passedAtTarget(
	clustering: Conditions['clustering'],
	hubSpread: number,
	allowed: number,
	told: boolean,
	programmes: number,
	firstSeed: number
): number {
	const outings = 24;
	// with a target of 1 the exposure is the number of events expected at the target
	const expected = (dispersion: number) => demonstrationExposure(1, 0.9, allowed, dispersion);
	const expectedEvents = told ? expected(trueDispersion(clustering, expected(1) / outings)) : expected(1);
	let passed = 0;
	for (let i = 0; i < programmes; i++) {
		const { fresh } = simulateProgramme(firstSeed + i, { clustering, hubSpread, outings, expectedEvents });
		if (unitTotals(fresh.outings).count <= allowed) passed++;
	}
	return passed / programmes;
}
