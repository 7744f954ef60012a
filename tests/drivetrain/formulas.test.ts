import { describe, expect, it } from 'vitest';
import { development } from '$lib/drivetrain/development';
import { engagedCadence } from '$lib/drivetrain/engagedCadence';
import { hubTorque } from '$lib/drivetrain/hubTorque';
import { median, quantile } from '$lib/drivetrain/median';

describe('hubTorque', () => {
	it('is power over angular speed, times sprocket over chainring, less 3 % on the way (definition of torque)', () => {
		// 200 W / (2 pi x 90/60 rad/s) = 21.22 Nm; / 3 = 7.074 Nm; x 0.97 = 6.861 Nm
		expect(hubTorque(200, 90, 3)).toBeCloseTo(6.861, 3);
	});

	it('takes no chain losses off power that is measured at the hub', () => {
		expect(hubTorque(200, 90, 3, 'hub')).toBeCloseTo(7.074, 3);
	});

	it('is not known at very low cadence, and never zero there', () => {
		expect(hubTorque(50, 29, 3)).toBeNaN();
		expect(hubTorque(50, NaN, 3)).toBeNaN();
	});
});

describe('development and engagedCadence', () => {
	it('gives 6.042 m for 48/17 on a 2.14 m wheel: 48 / 17 x 2.14', () => {
		expect(development(48, 17, 2.14)).toBeCloseTo(6.042, 3);
	});

	it('asks for 90 rpm at 9 m/s with 6 m: 60 x 9 / 6', () => {
		expect(engagedCadence(9, 6)).toBe(90);
	});

	it('says that it does not know when something is missing', () => {
		expect(development(48, 0, 2.1)).toBeNaN();
		expect(engagedCadence(9, 0)).toBeNaN();
	});
});

describe('quantile', () => {
	it('interpolates between order statistics (Hyndman and Fan 1996, type 7) and leaves out what is missing', () => {
		// 1, 2, 3, 4: position 0.25 x 3 = 0.75 between 1 and 2
		expect(quantile([4, NaN, 1, 3, 2], 0.25)).toBeCloseTo(1.75, 12);
		expect(median([3, 1, NaN, 2])).toBe(2);
		expect(median([])).toBeNaN();
	});
});
