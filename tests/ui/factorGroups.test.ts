import { describe, expect, it } from 'vitest';
import { createFormats } from '$lib/ui/formats';
import { factorGroups } from '$lib/ui/factorGroups';
import type { FactorFigures } from '$lib/ui/factorWords';

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
