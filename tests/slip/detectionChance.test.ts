import { describe, expect, it } from 'vitest';
import { detectionChance } from '$lib/slip/detectionChance';

describe('detectionChance', () => {
	it('is that of an observed second at the limit, whatever the limit is, and grows with the size', () => {
		const atLimit = detectionChance(90, 90);
		expect(atLimit).toBeGreaterThan(0.4);
		expect(detectionChance(60, 60)).toBeCloseTo(atLimit, 12);
		expect(detectionChance(90, 180)).toBeGreaterThan(atLimit);
		expect(detectionChance(90, 45)).toBeLessThan(atLimit);
		expect(detectionChance(46, 1e6)).toBeCloseTo(1, 4);
	});

	it('is not known where no limit is stated', () => {
		expect(detectionChance(NaN, 90)).toBeNaN();
	});
});
