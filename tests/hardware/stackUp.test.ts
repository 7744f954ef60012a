import { stackUp } from '$lib/hardware/stackUp';
import { describe, expect, it } from 'vitest';
import { element } from './elements';

const TOLERANCE = { minusMm: 0.05, plusMm: 0.1 };

describe('stackUp', () => {
	const elements = [
		element('left', 12, { ...TOLERANCE, measuredMm: 12.02 }),
		element('hub', 100, TOLERANCE),
		element('right', 30, { measuredMm: 29.98, inEndFloat: -1 }),
		element('inside the hub', 30.04, { measuredMm: 30.03, inEndFloat: 1 }),
		element('behind the cassette', 1.85, TOLERANCE)
	];

	it('adds up what lies between the faces and leaves out what does not', () => {
		const { total } = stackUp(elements);
		expect(total.drawn.nominalMm).toBe(142);
		expect(total.drawn.worstCase.lowestMm).toBeCloseTo(141.9, 9);
		expect(total.drawn.worstCase.highestMm).toBeCloseTo(142.2, 9);
	});

	it('takes measured lengths as they are and tolerances for the rest', () => {
		const { total } = stackUp(elements);
		expect(total.built.worstCase.lowestMm).toBeCloseTo(12.02 + 99.95 + 29.98, 9);
		expect(total.built.worstCase.highestMm).toBeCloseTo(12.02 + 100.1 + 29.98, 9);
		expect(total.notMeasured).toEqual(['hub 100']);
	});

	it('gives a measured total only when every element between the faces is measured', () => {
		expect(stackUp(elements).total.measuredMm).toBeNull();
		const all = elements.map((one) => ({ ...one, measuredMm: one.measuredMm ?? one.nominalMm }));
		expect(stackUp(all).total.measuredMm).toBeCloseTo(142, 9);
	});

	it('follows the signs for end float and has no engagement depth when no element is part of it', () => {
		const { endFloat, engagementDepth } = stackUp(elements);
		expect(endFloat?.measuredMm).toBeCloseTo(0.05, 9);
		expect(engagementDepth).toBeNull();
	});

	it('takes engagement depth away for a thicker element with sign -1', () => {
		const depth = (shim: number) =>
			stackUp([
				element('inside the hub', 4.5, { inEngagement: 1 }),
				element('inside the hub', shim, { inEngagement: -1 })
			]).engagementDepth!.drawn.nominalMm;
		expect(depth(0.25) - depth(0.35)).toBeCloseTo(0.1, 9);
	});

	it('is nothing for no elements', () => {
		const { total, endFloat } = stackUp([]);
		expect(total.drawn.nominalMm).toBe(0);
		expect(total.measuredMm).toBeNull();
		expect(endFloat).toBeNull();
	});
});
