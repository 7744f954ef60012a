import { describe, expect, it } from 'vitest';
import { createFormats } from '$lib/ui/formats';
import { factorGroups } from '$lib/ui/factorGroups';
import { factorWords, type FactorFigures } from '$lib/ui/factorWords';

const formats = createFormats('en-GB', 'UTC');
const factor = (name: FactorFigures['factor'], change: Partial<FactorFigures> = {}): FactorFigures => ({
	factor: name,
	rider: null,
	kind: 'fit',
	ratio: 1.9,
	lower: 1.4,
	upper: 2.6,
	pValue: 0.01,
	...change
});

describe('factorGroups', () => {
	it('gives a row to what has a figure and gathers the rest by its reason, losing none', () => {
		const { told, untold } = factorGroups(
			[
				factor('hub torque'),
				factor('age', { kind: 'too few' }),
				factor('wet', { kind: 'unbounded' }),
				factor('rider', { kind: 'too few', rider: 'R2' })
			],
			'R1',
			formats
		);
		expect(told.map(({ step }) => step)).toEqual(['10 Nm more at the hub']);
		expect(untold).toEqual([
			{ why: 'too few slips to say', steps: ['100 km more of age', 'R2 instead of R1'] },
			{ why: 'no slip on one side of it, so no figure can be given', steps: ['wet instead of dry'] }
		]);
	});

	it('keeps as a row what was weighed and not shown', () => {
		const { told, untold } = factorGroups([factor('gear', { pValue: 0.6 })], null, formats);
		expect(told[0].effect).toContain('not shown');
		expect(untold).toEqual([]);
	});
});

describe('factorWords', () => {
	const effect = (change: Partial<FactorFigures>) =>
		factorWords(factor('gear', { pValue: 0.6, ...change }), null, formats).effect;

	it('says that rides cannot tell instead of limits that leave everything open', () => {
		expect(effect({ ratio: 6e28, lower: 0.2, upper: 8e60 })).toBe(
			'these rides cannot tell: from 0.20 to more than 1,000 times as often'
		);
		expect(effect({ ratio: 1, lower: 1e-9, upper: 40 })).toBe(
			'these rides cannot tell: from less than 0.001 to 40.0 times as often'
		);
	});

	it('never writes a ratio out that has more digits than sense, also where it is shown', () => {
		expect(effect({ ratio: 5e4, lower: 12, upper: 1e12, pValue: 0.001 })).toBe(
			'more than 1,000 times as often (12.0 to more than 1,000)'
		);
	});

	it('keeps ordinary limits as they are', () => {
		expect(effect({ ratio: 0.58, lower: 0.23, upper: 1.5 })).toBe(
			'0.58 times as often (0.23 to 1.5): not shown'
		);
	});
});
