import { describe, expect, it } from 'vitest';
import { randomNumbers } from '$lib/reliability/randomNumbers';

/** the published definition of xoshiro128** in exact integers: the naive reference */
function* definition(seed: number): Generator<bigint> {
	const mask = 0xffffffffn;
	let mixer = BigInt(seed) & mask;
	const s: bigint[] = [];
	for (let i = 0; i < 4; i++) {
		mixer = (mixer + 0x9e3779b9n) & mask;
		let z = mixer;
		z = ((z ^ (z >> 16n)) * 0x85ebca6bn) & mask;
		z = ((z ^ (z >> 13n)) * 0xc2b2ae35n) & mask;
		s.push(z ^ (z >> 16n));
	}
	const turn = (x: bigint, bits: bigint) => ((x << bits) | (x >> (32n - bits))) & mask;
	for (;;) {
		yield (turn((s[1] * 5n) & mask, 7n) * 9n) & mask;
		const shifted = (s[1] << 9n) & mask;
		s[2] ^= s[0];
		s[3] ^= s[1];
		s[1] ^= s[2];
		s[0] ^= s[3];
		s[2] ^= shifted;
		s[3] = turn(s[3], 11n);
	}
}

describe('randomNumbers', () => {
	it('follows the definition of xoshiro128** in exact integers', () => {
		for (const seed of [0, 1, 77, 4294967295]) {
			const exact = definition(seed);
			const got = randomNumbers(seed);
			for (let i = 0; i < 200; i++) expect(got.next() * 4294967296).toBe(Number(exact.next().value));
		}
	});

	it('gives the same numbers for the same seed and others for another', () => {
		const draws = (seed: number) => {
			const stream = randomNumbers(seed);
			return Array.from({ length: 5 }, () => stream.next());
		};
		expect(draws(5)).toEqual(draws(5));
		expect(draws(5)).not.toEqual(draws(6));
	});

	it('draws Poisson counts whose mean and variance are the expected number', () => {
		for (const mean of [0.3, 4, 75]) {
			const stream = randomNumbers(12);
			const draws = Array.from({ length: 20_000 }, () => stream.poisson(mean));
			const average = draws.reduce((a, b) => a + b) / draws.length;
			const variance = draws.reduce((a, b) => a + (b - average) ** 2, 0) / (draws.length - 1);
			// four standard errors of the mean and of the variance
			expect(Math.abs(average - mean)).toBeLessThan(4 * Math.sqrt(mean / 20_000));
			expect(Math.abs(variance - mean)).toBeLessThan(4 * Math.sqrt((2 * mean * mean + mean) / 20_000));
		}
		expect(randomNumbers(1).poisson(0)).toBe(0);
	});

	it('draws normals of mean 0 and standard deviation 1, and whole numbers evenly', () => {
		const stream = randomNumbers(3);
		const draws = Array.from({ length: 20_000 }, () => stream.normal());
		const average = draws.reduce((a, b) => a + b) / draws.length;
		expect(Math.abs(average)).toBeLessThan(4 / Math.sqrt(20_000));
		expect(draws.filter((z) => Math.abs(z) > 1.959964).length / 20_000).toBeCloseTo(0.05, 2);
		const faces = new Array<number>(6).fill(0);
		for (let i = 0; i < 60_000; i++) faces[stream.below(6)]++;
		for (const times of faces) expect(Math.abs(times - 10_000)).toBeLessThan(4 * 92);
	});
});
