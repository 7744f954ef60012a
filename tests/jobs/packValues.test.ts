import { describe, expect, it } from 'vitest';
import { packValues } from '../../src/jobs/analysis/packValues';
import { unpackValues } from '../../src/jobs/analysis/unpackValues';

function roundTrip(values: readonly number[], step: number): number[] {
	const into = new Float64Array(values.length);
	unpackValues(packValues(values, step), step, into, 0, values.length);
	return [...into];
}

describe('packValues and unpackValues', () => {
	it('give whole multiples of the step back exactly, missing ones as NaN', () => {
		expect(roundTrip([0, 5, -3, NaN, 1000, -1000, NaN, 1000], 1)).toEqual([
			0,
			5,
			-3,
			NaN,
			1000,
			-1000,
			NaN,
			1000
		]);
	});

	it('keep other values to within half a step', () => {
		const values = [12.3456, 12.3461, -7.77777, 0.00049];
		roundTrip(values, 0.001).forEach((value, i) =>
			expect(Math.abs(value - values[i])).toBeLessThanOrEqual(0.0005 + 1e-9)
		);
	});

	it('hold positions, which need more than 32 bits', () => {
		const values = [179.9999999, -179.9999999, 48.1234567];
		roundTrip(values, 1e-7).forEach((value, i) => expect(value).toBeCloseTo(values[i], 7));
	});

	it('take an infinite value for a missing one', () => {
		expect(roundTrip([1, Infinity, 2], 1)).toEqual([1, NaN, 2]);
	});

	it('take one byte for each value of a channel that changes slowly', () => {
		const values = Array.from({ length: 1000 }, (_, i) => 80 + Math.round(5 * Math.sin(i / 9)));
		expect(packValues(values, 1).length).toBeLessThan(1003);
	});

	it('refuse bytes that hold fewer or more values than told', () => {
		const packed = packValues([1, 2, 3], 1);
		expect(() => unpackValues(packed, 1, new Float64Array(4), 0, 4)).toThrow('end too early');
		expect(() => unpackValues(packed, 1, new Float64Array(2), 0, 2)).toThrow('go on after');
		expect(() => unpackValues(Uint8Array.of(200), 1, new Float64Array(1), 0, 1)).toThrow(RangeError);
	});
});
