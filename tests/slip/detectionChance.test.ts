import { describe, expect, it } from 'vitest';
import { detectionChance } from '$lib/slip/detectionChance';
import { FULL_SIZE_DEG } from '$lib/slip/model/observedModel';

describe('detectionChance', () => {
	it('is that of an observed second at the limit, whatever the limit is, and grows with the size', () => {
		const atLimit = detectionChance(90, 90);
		expect(atLimit).toBeGreaterThan(0.4);
		expect(detectionChance(60, 60)).toBeCloseTo(atLimit, 12);
		expect(detectionChance(90, 180)).toBeGreaterThan(atLimit);
		expect(detectionChance(90, 45)).toBeLessThan(atLimit);
		expect(detectionChance(46, 90)).toBeGreaterThan(0.8);
	});

	it('grows no more beyond the full size', () => {
		expect(detectionChance(90, FULL_SIZE_DEG)).toBeGreaterThan(detectionChance(90, FULL_SIZE_DEG - 5));
		expect(detectionChance(90, 400)).toBe(detectionChance(90, FULL_SIZE_DEG));
	});

	it('is not known where no limit is stated', () => {
		expect(detectionChance(NaN, 90)).toBeNaN();
	});
});
