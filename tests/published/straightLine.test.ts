import { describe, expect, it } from 'vitest';
import { straightLine } from '$lib/reliability/straightLine';
import { closeTo } from './closeTo';

// NIST StRD, linear regression, data set Norris (36 points, observed; certified figures). The figures of data
// and results stand here from memory; that they belong together the agreement to ten digits shows.
const NORRIS: readonly (readonly [number, number])[] = [
	[0.2, 0.1],
	[337.4, 338.8],
	[118.2, 118.1],
	[884.6, 888],
	[10.1, 9.2],
	[226.5, 228.1],
	[666.3, 668.5],
	[996.3, 998.5],
	[448.6, 449.1],
	[777, 778.9],
	[558.2, 559.2],
	[0.4, 0.3],
	[0.6, 0.1],
	[775.5, 778.1],
	[666.9, 668.8],
	[338, 339.3],
	[447.5, 448.9],
	[11.6, 10.8],
	[556, 557.7],
	[228.1, 228.3],
	[995.8, 998],
	[887.6, 888.8],
	[120.2, 119.6],
	[0.3, 0.3],
	[0.3, 0.6],
	[556.8, 557.6],
	[339.1, 339.3],
	[887.2, 888],
	[999, 998.5],
	[779, 778.9],
	[11.1, 10.2],
	[118.3, 117.6],
	[229.2, 228.9],
	[669.1, 668.4],
	[448.9, 449.2],
	[0.5, 0.2]
];

describe('straightLine against certified figures', () => {
	it('gives the certified line of the NIST data set Norris', () => {
		const line = straightLine(NORRIS.map(([x, y]) => ({ x, y })))!;
		closeTo(line.slope, 1.00211681802045, 1e-12, 'slope');
		closeTo(line.intercept, -0.262323073774029, 1e-10, 'intercept');
		closeTo(line.residualSd, 0.884796396144373, 1e-11, 'residual standard deviation');
		closeTo(line.slopeStandardError, 0.429796848199937e-3, 1e-11, 'standard error of the slope');
		closeTo(line.interceptStandardError, 0.232818234301152, 1e-11, 'standard error of the intercept');
		expect(line.degreesOfFreedom).toBe(34);
	});
});
