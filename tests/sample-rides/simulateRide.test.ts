import { describe, expect, it } from 'vitest';
import { randomHealthySpec, randomSlippingSpec } from '../../sample-rides/generator/randomSpecs';
import { simulateRide } from '../../sample-rides/generator/simulateRide';
import type { RideSpec } from '../../sample-rides/generator/rideSpec';
import type { Motion, Shift } from '../../sample-rides/generator/simulatedRide';

const short = (spec: RideSpec): RideSpec => ({ ...spec, maxDurationS: 3600 });

/** Gears as the shifts tell, one per sample of the motion. */
function ratioAt(spec: RideSpec, shifts: readonly Shift[], first: number) {
	let i = 0;
	let ratio = first;
	return (timeS: number) => {
		while (i < shifts.length && shifts[i].timeS <= timeS) {
			ratio = spec.bike.chainrings[shifts[i].front] / spec.bike.cassette[shifts[i].rear];
			i++;
		}
		return ratio;
	};
}

const firstRatio = (spec: RideSpec) =>
	spec.bike.chainrings[0] / spec.bike.cassette[Math.floor(spec.bike.cassette.length * 0.6)];

/** Crank angle gained on the wheel between two instants, degrees. */
function gainedDeg(motion: Motion, ratio: number, circumferenceM: number, from: number, to: number): number {
	const crank = motion.crankRad[to] - motion.crankRad[from];
	const wheel = ((motion.wheelM[to] - motion.wheelM[from]) / circumferenceM) * 2 * Math.PI;
	return ((crank - wheel / ratio) * 180) / Math.PI;
}

describe('simulateRide', { timeout: 30_000 }, () => {
	it('gives the same ride for the same spec and seed, and another one for another seed', () => {
		const spec = short(randomSlippingSpec(5));
		const a = simulateRide(spec, 11);
		const b = simulateRide(spec, 11);
		const c = simulateRide(spec, 12);
		expect(b.truth).toEqual(a.truth);
		expect(b.ride).toEqual(a.ride);
		expect(c.ride.channels.cadenceRpm?.value).not.toEqual(a.ride.channels.cadenceRpm?.value);
	});

	it('lets a healthy hub neither slip nor fail to pick up', () => {
		for (let seed = 0; seed < 12; seed++) {
			const { truth } = simulateRide(short(randomHealthySpec(seed)), seed);
			expect(truth.events.filter((event) => event.kind !== 'chain skip')).toEqual([]);
			expect(truth.drivenKm).toBeGreaterThan(1);
		}
	});

	it('keeps the crank on or behind the wheel times the ratio, but for take-up, shifts and events', () => {
		const spec = short(randomSlippingSpec(15));
		const { motion, truth } = simulateRide(spec, 15);
		const ratio = ratioAt(spec, motion.shifts, firstRatio(spec));
		const allowedDeg = 360 / spec.hub.points + spec.bike.chainSlackDeg;
		let checked = 0;
		for (let i = 50; i < motion.length; i += 50) {
			const timeS = i * motion.stepS;
			const now = ratio(timeS);
			const shifted = motion.shifts.some((shift) => timeS - shift.timeS > -0.1 && timeS - shift.timeS < 2);
			const event = truth.events.some((e) => timeS > e.t0 - 0.2 && timeS - 1.2 < e.t1);
			if (shifted || event) continue;
			checked++;
			expect(gainedDeg(motion, now, spec.bike.circumferenceM, i - 50, i)).toBeLessThan(2 * allowedDeg + 2);
		}
		expect(checked).toBeGreaterThan(1500);
	});

	it('turns crank and wheel together, by the ratio of the gear, while the rider presses', () => {
		const spec = short(randomSlippingSpec(15));
		const { motion } = simulateRide(spec, 15);
		const ratio = ratioAt(spec, motion.shifts, firstRatio(spec));
		let largest = 0;
		let shift = 0;
		let checked = 0;
		for (let i = 2; i < motion.length - 2; i++) {
			// work flows through the whole of this step and both beside it: the clutch holds
			const pressing = [-1, 0, 1].every((k) => motion.workJ[i + k + 1] - motion.workJ[i + k] > 0.2);
			const now = ratio(i * motion.stepS);
			while (shift < motion.shifts.length - 1 && motion.shifts[shift + 1].timeS < i * motion.stepS) shift++;
			const shifting = [shift, shift + 1].some(
				(k) => Math.abs((motion.shifts[k]?.timeS ?? Infinity) - i * motion.stepS) < 0.8
			);
			if (!pressing || shifting) continue;
			checked++;
			largest = Math.max(largest, Math.abs(gainedDeg(motion, now, spec.bike.circumferenceM, i, i + 1)));
		}
		expect(largest).toBeLessThan(1e-6);
		expect(checked).toBeGreaterThan(20_000);
	});

	it('obeys the balance of energy: the work at the crank goes into air, slope, tyres and speed', () => {
		const base = randomHealthySpec(4);
		// a flat, still road without obstacles and brakes, so that every loss can be computed
		const spec = {
			...short(base),
			maxDurationS: 900,
			road: { ...base.road, hilliness: 0, windMps: 0, roughness: 0, spinsPerHour: 0, trainer: true }
		};
		const { motion } = simulateRide(spec, 4);
		const { massKg, rollingResistance, dragAreaM2, efficiency } = spec.bike;
		let lossJ = 0;
		for (let i = 1; i < motion.length; i++) {
			const way = motion.groundM[i] - motion.groundM[i - 1];
			const speed = way / motion.stepS;
			lossJ += way * (massKg * 9.81 * rollingResistance + 0.5 * 1.2 * dragAreaM2 * speed * speed);
		}
		const end = motion.length - 1;
		const endMps = (motion.groundM[end] - motion.groundM[end - 1]) / motion.stepS;
		const storedJ = 0.5 * (massKg + 2) * endMps * endMps;
		expect((motion.workJ[end] * efficiency) / (lossJ + storedJ)).toBeCloseTo(1, 2);
	});

	it('states as overrun what the crank really gained on the wheel', () => {
		const spec = short({
			...randomSlippingSpec(15),
			road: { ...randomSlippingSpec(15).road, spinsPerHour: 0 }
		});
		const { motion, truth } = simulateRide(spec, 15);
		let checked = 0;
		for (const event of truth.events) {
			if (motion.shifts.some((shift) => Math.abs(shift.timeS - event.t0) < 2)) continue;
			const from = Math.floor(event.t0 / motion.stepS);
			const to = Math.ceil(event.t1 / motion.stepS);
			const gained = gainedDeg(motion, event.front / event.rear, spec.bike.circumferenceM, from, to);
			// up to 0.04 s outside the event are included: nothing is gained there while engaged
			if (event.kind === 'slip')
				expect(Math.abs(gained - event.crankDeg)).toBeLessThan(4 + 0.06 * event.crankDeg);
			expect(event.hubDeg / event.crankDeg).toBeCloseTo(event.front / event.rear, 1);
			checked++;
		}
		expect(checked).toBeGreaterThan(5);
	});
});
