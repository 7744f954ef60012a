import { describe, expect, it } from 'vitest';
import { glyphSize } from '$lib/charts/glyphSize';
import { heightDomain } from '$lib/charts/heightDomain';
import { scaleLinear } from 'd3';
import { heldScale, linearScale, roundedScale } from '$lib/charts/linearScale';
import { nearestPoint } from '$lib/charts/nearestPoint';
import { speedDomain } from '$lib/charts/speedDomain';

describe('roundedScale and heldScale', () => {
	it('end where the scales of d3 end, on drawn domains', () => {
		let seed = 3;
		const chance = () => (seed = (seed * 48271) % 2147483647) / 2147483647;
		for (let i = 0; i < 200; i++) {
			const from = chance() < 0.5 ? 0 : 100 * chance();
			const to = from + 10 ** (6 * chance() - 3);
			const count = 3 + Math.floor(4 * chance());
			const ours = roundedScale([from, to], [300, 10], count);
			const theirs = scaleLinear([from, to], [300, 10]).nice(count);
			expect(ours.domain).toEqual(theirs.domain());
			expect(ours.ticks(count)).toEqual(theirs.ticks(count));
			expect(ours((from + to) / 2)).toBeCloseTo(theirs((from + to) / 2), 6);
		}
	});

	it('draw at their ends what lies beyond them', () => {
		const held = heldScale(linearScale([0, 10], [100, 0]));
		expect([held(-5), held(5), held(Infinity)]).toEqual([100, 50, 0]);
		expect(held.ticks(2)).toEqual([0, 5, 10]);
	});
});

describe('linearScale', () => {
	it('leads to pixels and back', () => {
		const y = linearScale([-15, 60], [150, 0]);
		expect([y(-15), y(60), y(0)]).toEqual([150, 0, 120]);
		expect(y.invert(120)).toBeCloseTo(0, 12);
		expect(y.ticks(4)).toEqual([0, 20, 40, 60]);
	});

	it('puts everything in the middle where the domain has no length', () => {
		expect(linearScale([5, 5], [0, 100])(5)).toBe(50);
		expect(linearScale([5, 5], [0, 100]).invert(80)).toBe(5);
	});
});

describe('glyphSize', () => {
	it('grows by area between the smallest and the largest sign', () => {
		expect(glyphSize(90)).toBe(5);
		expect(glyphSize(180) ** 2 / glyphSize(90) ** 2).toBeCloseTo(2, 1);
		expect([glyphSize(1), glyphSize(5000), glyphSize(undefined), glyphSize(NaN)]).toEqual([3.5, 9, 5, 5]);
	});
});

describe('heightDomain', () => {
	it('takes tens of metres and does not stretch what a barometer wanders', () => {
		expect(heightDomain([212, 223])).toEqual([190, 240]);
		expect(heightDomain([102, 867])).toEqual([100, 870]);
	});
});

describe('speedDomain', () => {
	it('takes the range in use, and something where nothing is known', () => {
		expect(speedDomain({ low: [21.4, NaN], high: [22.6, NaN] })).toEqual([19, 25]);
		expect(speedDomain({ low: [1], high: [2] })).toEqual([0, 4]);
		expect(speedDomain({ low: [NaN], high: [NaN] })).toEqual([0, 10]);
	});
});

describe('nearestPoint', () => {
	const points = [{ x: 0, y: 0 }, null, { x: 10, y: 0 }, { x: 30, y: 40 }];
	const at = (x: number, y: number) => nearestPoint({ x, y }, [0, 3], (second) => points[second]);

	it('finds the nearest drawn second and nothing where none is near', () => {
		expect(at(6, 1)).toBe(2);
		expect(at(4, 1)).toBe(0);
		expect(at(30, 25)).toBe(3);
		expect(at(200, 200)).toBeNull();
	});
});
