import { describe, expect, it } from 'vitest';
import { gearSetDistance } from '$lib/drivetrain/gearSetDistance';

describe('gearSetDistance', () => {
	it('is nothing for gears of the set', () => {
		expect(gearSetDistance([{ developmentM: 5, seconds: 10 }], [2.5, 5, 10])).toBe(0);
	});

	it('is the relative step to the nearest gear, as a logarithm', () => {
		expect(gearSetDistance([{ developmentM: 5.1, seconds: 60 }], [2.5, 5])).toBeCloseTo(Math.log(1.02), 12);
	});

	it('weights gears by the time ridden in them', () => {
		const gears = [
			{ developmentM: 5, seconds: 300 },
			{ developmentM: 2.75, seconds: 100 }
		];
		expect(gearSetDistance(gears, [2.5, 5])).toBeCloseTo(Math.log(1.1) / 4, 12);
	});

	it('is the same when bike and ride are measured with another circumference each', () => {
		const gears = [{ developmentM: 4.2, seconds: 50 }];
		const [near, far] = [gearSetDistance(gears, [4]), gearSetDistance(gears, [3])];
		expect(gearSetDistance([{ developmentM: 8.4, seconds: 50 }], [8])).toBeCloseTo(near, 12);
		expect(far).toBeGreaterThan(near);
	});

	it('is not known without gears, without time in them, or without a set', () => {
		expect(gearSetDistance([], [5])).toBeNaN();
		expect(gearSetDistance([{ developmentM: 5, seconds: 0 }], [5])).toBeNaN();
		expect(gearSetDistance([{ developmentM: 5, seconds: 9 }], [])).toBeNaN();
	});
});
