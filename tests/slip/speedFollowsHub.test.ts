import { describe, expect, it } from 'vitest';
import { analyseRide } from '$lib/slip/analyseRide';
import { speedFollowsHub } from '$lib/slip/speedFollowsHub';
import { steadyRecords, toRide } from './steadyRide';

describe('speedFollowsHub', () => {
	it('takes speed for the driven wheel unless bike or file says otherwise', () => {
		expect(speedFollowsHub({ speedSource: 'not known' }, {})).toBe(true);
		expect(speedFollowsHub({ speedSource: 'wheel' }, {})).toBe(true);
		expect(speedFollowsHub({ speedSource: 'position' }, {})).toBe(false);
		expect(speedFollowsHub({ speedSource: 'wheel' }, { speedSensor: 'front' })).toBe(false);
		expect(speedFollowsHub({ speedSource: 'wheel' }, { speedSensor: 'gps' })).toBe(false);
	});

	it('believes what is stated of the bike before what the file lists', () => {
		expect(speedFollowsHub({ speedSource: 'position' }, { speedSensor: 'rear' })).toBe(true);
	});

	it('leaves nothing observed on a ride whose speed is not that of the driven wheel', () => {
		const ride = toRide(steadyRecords());
		expect(analyseRide(ride).observedM).toBeGreaterThan(0);
		for (const speedSensor of ['front', 'gps'] as const) {
			const { observedM, observed, traces } = analyseRide(ride, { speedSensor });
			expect(observedM).toBe(0);
			expect(observed).toEqual([]);
			expect(traces.detectionLimitCrankDeg.every(Number.isNaN)).toBe(true);
		}
		expect(analyseRide({ ...ride, speedSource: 'position' }).observedM).toBe(0);
	});
});
