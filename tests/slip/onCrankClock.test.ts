import { describe, expect, it } from 'vitest';
import { randomSlippingSpec } from '../../sample-rides/generator/randomSpecs';
import { recordLogger } from '../../sample-rides/generator/recordLogger';
import { simulateRide } from '../../sample-rides/generator/simulateRide';
import { analyseRide } from '$lib/slip/analyseRide';
import { insertionTest } from '$lib/slip/insertionTest';
import { onCrankClock } from '$lib/slip/onCrankClock';
import { valuesAt } from '$lib/ride/valuesAt';
import type { Ride } from '$lib/ride/ride';

/** The same ride with its wheel recorded on another clock: later by a third of a step, and slower. */
function withWheelApart(ride: Ride, hz: number): Ride {
	const timeS = Float64Array.from({ length: Math.floor(ride.durationS * hz) }, (_, i) => (i + 1 / 3) / hz);
	const value = valuesAt(ride.channels.wheelRpm!, timeS);
	return { ...ride, channels: { ...ride.channels, wheelRpm: { timeS, value } } };
}

function simulated(seed: number) {
	const any = randomSlippingSpec(seed);
	const spec = { ...any, maxDurationS: 1800, road: { ...any.road, trainer: false } };
	const { motion, truth } = simulateRide(spec, seed);
	return { ride: recordLogger(spec, motion, seed), truth };
}

describe('onCrankClock', () => {
	const { ride, truth } = simulated(70010);

	it('leaves a ride as it is whose channels share a clock', () => {
		expect(onCrankClock(ride).channels).toEqual(ride.channels);
		expect(onCrankClock(ride).channels.wheelRpm).toBe(ride.channels.wheelRpm);
	});

	it('brings the wheel onto the clock of the crank, which stays', () => {
		const { channels } = onCrankClock(withWheelApart(ride, 40));
		expect(channels.cadenceRpm).toBe(ride.channels.cadenceRpm);
		expect(channels.wheelRpm!.timeS).toBe(ride.channels.cadenceRpm!.timeS);
		const off = channels.wheelRpm!.value.map((rpm, i) => Math.abs(rpm - ride.channels.wheelRpm!.value[i]));
		expect(
			off
				.filter((one) => !Number.isNaN(one))
				.sort()
				.at(-100)!
		).toBeLessThan(6);
	});

	it('shows the same slips as the recording on one clock, at nearly the same size', () => {
		const near = (startS: number) => (event: { startS: number }) => Math.abs(event.startS - startS) < 0.5;
		const [together, apart] = [ride, withWheelApart(ride, 40)].map((one) => analyseRide(one).events);
		const slips = truth.events.filter(({ kind }) => kind === 'slip');
		const shown = slips.filter(({ t0 }) => together.some(near(t0)));
		expect(shown.length).toBeGreaterThan(10);
		const ratios = shown.flatMap(({ t0 }) => {
			const [one, other] = [together.find(near(t0))!, apart.find(near(t0))];
			return other ? [other.overrunCrankDeg.value / one.overrunCrankDeg.value] : [];
		});
		expect(ratios.length).toBeGreaterThanOrEqual(shown.length - 1);
		ratios.sort((a, b) => a - b);
		expect(ratios[ratios.length >> 1]).toBeGreaterThan(0.95);
		expect(ratios[ratios.length >> 1]).toBeLessThan(1.05);
	});

	it('is used where slips are put into such a ride too', () => {
		const { put, found } = insertionTest(withWheelApart(ride, 40), {}, 1);
		expect(put).toBeGreaterThan(5);
		expect(found / put).toBeGreaterThan(0.5);
	});

	it('promises nothing of a wheel that is recorded once a second: that is no logger', () => {
		const { events } = analyseRide(withWheelApart(ride, 1));
		expect(events.every(({ reasons }) => !reasons.join(' ').includes('within'))).toBe(true);
	});
});
