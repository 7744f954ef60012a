import { rimShift } from '$lib/hardware/rimShift';
import { rimShiftOfSpacer } from '$lib/hardware/rimShiftOfSpacer';
import { describe, expect, it } from 'vitest';
import { element } from './elements';
import { seeded } from './seeded';

/*
 * Worked by hand (common practice, no source): faces at 0 and 142, midplane at 71, rim laced at 71. A spacer
 * of 2 on the left puts the left face at -2: the midplane is (-2 + 142)/2 = 70, the rim stands 1 towards the
 * right. Taking it from the right as well puts the right face at 140: midplane 69, rim 2 towards the right.
 */
const dished = [element('left', 20), element('hub', 95), element('right', 25), element('right', 2)];

describe('rimShift', () => {
	it('is half the thickness of a spacer added on the left, towards the drive side', () => {
		expect(rimShift(dished, [...dished, element('left', 2)])).toBe(1);
		expect(rimShift(dished, [...dished, element('right', 2)])).toBe(-1);
	});

	it('is the whole thickness of a spacer moved to the other side at equal width', () => {
		const moved = [...dished.slice(0, 3), element('left', 2)];
		expect(rimShift(dished, moved)).toBe(2);
		expect(rimShift(moved, dished)).toBe(-2);
	});

	it('is nothing for a spacer behind the cassette or inside the hub', () => {
		expect(rimShift(dished, [...dished, element('behind the cassette', 1.85)])).toBe(0);
		expect(rimShift(dished, [...dished, element('inside the hub', 0.25)])).toBe(0);
	});

	it('counts what was measured', () => {
		expect(rimShift(dished, [...dished, element('left', 2, { measuredMm: 2.1 })])).toBeCloseTo(1.05, 12);
	});

	it('cannot be told when the hub between the sides is another one', () => {
		expect(rimShift(dished, [element('left', 20), element('hub', 96), element('right', 27)])).toBeNull();
	});

	it('agrees with the positions of the faces worked out from the left one (100 seeded stacks)', () => {
		const random = seeded(5);
		const length = () => Math.round(random() * 300) / 10;
		for (let round = 0; round < 100; round++) {
			const [l1, r1, l2, r2] = [length(), length(), length(), length()];
			// rim at a place of the hub: distance from the hub's left end
			const rim = 40;
			const offset = (left: number, right: number) => left + rim - (left + 95 + right) / 2;
			const stack = (left: number, right: number) => [
				element('left', left),
				element('hub', 95),
				element('right', right)
			];
			expect(rimShift(stack(l1, r1), stack(l2, r2))).toBeCloseTo(offset(l2, r2) - offset(l1, r1), 9);
		}
	});
});

describe('rimShiftOfSpacer', () => {
	it('says the same as the two stacks for each move', () => {
		expect(rimShiftOfSpacer(2, 'added on the left')).toBe(1);
		expect(rimShiftOfSpacer(2, 'added on the right')).toBe(-1);
		expect(rimShiftOfSpacer(2, 'moved from right to left')).toBe(2);
		expect(rimShiftOfSpacer(2, 'moved from left to right')).toBe(-2);
		expect(rimShiftOfSpacer(2, 'put behind the cassette')).toBe(0);
	});

	it('refuses a thickness that is negative or not a number', () => {
		expect(() => rimShiftOfSpacer(-1, 'added on the left')).toThrow('thicknessMm: -1');
		expect(() => rimShiftOfSpacer(NaN, 'added on the left')).toThrow(RangeError);
	});
});
