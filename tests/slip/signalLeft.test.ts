import { describe, expect, it } from 'vitest';
import { random } from '../../sample-rides/generator/random';
import { signalLeft, type ScoredCandidate } from '../bench/training/signalLeft';

/** Candidates whose true log odds are what the scorer gave plus `left` times a feature between -0.5 and 0.5. */
function candidates(left: number, seed: number, count = 600): ScoredCandidate[] {
	const chance = random(seed);
	return Array.from({ length: count }, () => {
		const logOdds = chance.between(-2, 2);
		const value = chance.between(-0.5, 0.5);
		return { logOdds, value, slip: chance.chance(1 / (1 + Math.exp(-logOdds - left * value))) };
	});
}

describe('signalLeft', () => {
	it('finds what the scorer does not know, with its sign and about its size', () => {
		for (const left of [4, -4]) {
			const { gain, slope } = signalLeft(candidates(left, 3))!;
			expect(gain).toBeGreaterThan(30);
			expect(slope).toBeGreaterThan(left - 1.5);
			expect(slope).toBeLessThan(left + 1.5);
		}
	});

	it('falls by as much as chance has it where nothing is left: above 3.84 in one of twenty (Wilks 1938)', () => {
		const gains = Array.from({ length: 100 }, (_, k) => signalLeft(candidates(0, k + 1, 120))!.gain);
		expect(Math.min(...gains)).toBeGreaterThan(-1e-6);
		const above = gains.filter((gain) => gain > 3.84).length;
		// 100 draws of one in twenty lie between 1 and 11 (binomial, 98 %)
		expect(above).toBeGreaterThanOrEqual(1);
		expect(above).toBeLessThanOrEqual(11);
	});

	it('does not depend on the scale of the feature, and leaves out what cannot be said', () => {
		const drawn = candidates(3, 8);
		const bent = drawn.map((one) => ({ ...one, value: Math.exp(5 * one.value) }));
		const more = [...bent, ...drawn.map((one) => ({ ...one, value: NaN }))];
		expect(signalLeft(more)).toEqual(signalLeft(drawn));
	});

	it('says nothing of too few candidates, of one kind, or of a feature with one value', () => {
		const drawn = candidates(3, 8);
		expect(signalLeft(drawn.slice(0, 49))).toBeNull();
		expect(signalLeft(drawn.map((one) => ({ ...one, slip: true })))).toBeNull();
		expect(signalLeft(drawn.map((one) => ({ ...one, value: 7 })))).toBeNull();
	});
});
