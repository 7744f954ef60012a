import { describe, expect, it } from 'vitest';
import { randomSlippingSpec } from '../../sample-rides/generator/randomSpecs';
import { recordLogger } from '../../sample-rides/generator/recordLogger';
import { simulateRide } from '../../sample-rides/generator/simulateRide';

describe('recordLogger', { timeout: 30_000 }, () => {
	const spec = { ...randomSlippingSpec(15), maxDurationS: 1800 };
	const { motion, truth } = simulateRide(spec, 15);
	const ride = recordLogger(spec, motion, 15);
	const cadence = ride.channels.cadenceRpm!;
	const wheel = ride.channels.wheelRpm!;
	const torque = ride.channels.crankTorqueNm!;

	it('gives crank, wheel and torque 50 times a second on one clock, and no speed, power or instant', () => {
		expect(cadence.timeS).toBe(wheel.timeS);
		expect(cadence.timeS).toBe(torque.timeS);
		expect(cadence.timeS[1000]).toBeCloseTo(20, 9);
		expect(Object.keys(ride.channels).sort()).toEqual(['cadenceRpm', 'crankTorqueNm', 'wheelRpm']);
		expect(ride.startedAtMs).toBe(0);
	});

	it('turns the wheel over the distance of the ride', () => {
		const turns = wheel.value.reduce((sum, rpm) => sum + rpm / 60 / 50, 0);
		expect((turns * spec.bike.circumferenceM) / 1000 / truth.km).toBeCloseTo(1, 2);
	});

	it('keeps the work: torque times crank speed adds up to the work at the crank', () => {
		const workJ = torque.value.reduce(
			(sum, nm, i) => sum + ((nm * cadence.value[i] * Math.PI) / 30) * motion.stepS,
			0
		);
		expect(workJ / motion.workJ[motion.length - 1]).toBeCloseTo(1, 2);
	});

	it('shows each slip as crank angle gained, to a few degrees', () => {
		let checked = 0;
		for (const event of truth.events) {
			if (event.kind !== 'slip' || motion.shifts.some((s) => Math.abs(s.timeS - event.t0) < 2)) continue;
			let gainedDeg = 0;
			for (let i = Math.floor(event.t0 * 50); i < Math.ceil(event.t1 * 50); i++)
				gainedDeg += (6 * (cadence.value[i] - (wheel.value[i] * event.rear) / event.front)) / 50;
			expect(Math.abs(gainedDeg - event.crankDeg)).toBeLessThan(5 + 0.06 * event.crankDeg);
			checked++;
		}
		expect(checked).toBeGreaterThan(3);
	});
});
