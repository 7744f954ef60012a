import { describe, expect, it } from 'vitest';
import { logisticSlopeLimits } from '$lib/reliability/logisticSlopeLimits';
import { poissonRegression } from '$lib/reliability/poissonRegression';
import influence from './reference/10_logistic_isotonic.json';
import { closeTo } from './closeTo';
import { referenceCases } from './referenceCases';

// Deaths from coronary disease of British doctors by smoking and age (Doll and Hill 1966; Breslow and Day 1987,
// IARC Sci. Publ. 82): deaths and person-years, ages 35 to 84 in five groups. Data and printed results from memory;
// that they belong together the agreement shows.
const DEATHS = [
	[32, 104, 206, 186, 102],
	[2, 12, 28, 28, 31]
];
const YEARS = [
	[52407, 43248, 28612, 12663, 5317],
	[18790, 10673, 5710, 2585, 1462]
];
const doctors = [1, 0].flatMap((smokes, s) =>
	DEATHS[s].map((count, age) => ({
		count,
		exposure: YEARS[s][age],
		values: [smokes, ...[1, 2, 3, 4].map((group) => (group === age ? 1 : 0))]
	}))
);

describe('poissonRegression against published figures', () => {
	it('gives the rate ratios that a statistics manual prints for the British doctors', () => {
		const { effects, events } = poissonRegression(doctors, 0.95);
		expect(events).toBe(731);
		// entry "poisson" of a statistics package's reference manual: ratio and 95 % limits of smoking, then ages
		closeTo(effects[0].ratio, 1.425519, 1e-6, 'smoking');
		closeTo(effects[0].lower, 1.154984, 1e-6, 'smoking, lower');
		closeTo(effects[0].upper, 1.759421, 1e-6, 'smoking, upper');
		[4.410584, 13.8392, 28.51678, 40.45121].forEach((ratio, group) =>
			closeTo(effects[group + 1].ratio, ratio, 1e-6, `age group ${group + 1}`)
		);
	});
});

describe('logisticSlopeLimits against R confint (MASS 7.3-58.2)', () => {
	it("gives R's profile limits of the slope", () => {
		const cases = referenceCases(influence).filter((one) => 'slope_ci_profile' in one.expected);
		expect(cases).toHaveLength(2);
		for (const { id, inputs, expected } of cases) {
			const points = inputs.torque.map((x: number, i: number) => ({
				x,
				events: inputs.slips[i],
				exposure: inputs.trials[i]
			}));
			const got = logisticSlopeLimits(points, inputs.conf)!;
			// R interpolates the profile: good to four digits
			closeTo(got.lower, expected.slope_ci_profile[0], 1e-4, id);
			closeTo(got.upper, expected.slope_ci_profile[1], 1e-4, id);
		}
	});
});
