import { describe, expect, it } from 'vitest';
import { distanceBetween, distanceReached } from '$lib/hardware/distanceReached';
import { instantAt } from '$lib/hardware/instantAt';
import { wheelAxis, type DistancePiece } from '$lib/hardware/wheelAxis';
import { seeded, shuffled } from './seeded';

const ride = (id: number, startMs: number, endMs: number, distanceM: number, buildId: number | null = 7) =>
	({ kind: 'ride', id, startMs, endMs, distanceM, buildId }) as const;
const unlogged = (id: number, atMs: number, distanceM: number) =>
	({ kind: 'unlogged', id, startMs: atMs, endMs: atMs, distanceM, buildId: 7 }) as const;

/** rides and distance without a recording, some at the same instants, with lengths that no float holds exactly */
function invented(random: () => number): DistancePiece[] {
	return Array.from({ length: 1 + Math.floor(random() * 30) }, (_, id) => {
		const startMs = Math.floor(random() * 20) * 1000;
		const distanceM = random() * 80_000 + 0.1;
		return random() < 0.2
			? unlogged(id, startMs, distanceM)
			: ride(id, startMs, startMs + Math.floor(random() * 5) * 500, distanceM, id % 3);
	});
}

describe('wheelAxis', () => {
	it('lays rides and unlogged distance end to end in order of time', () => {
		const axis = wheelAxis([ride(1, 50, 60, 30), unlogged(1, 20, 5), ride(2, 0, 10, 7)]);
		expect(axis.map(({ kind, fromM, toM }) => [kind, fromM, toM])).toEqual([
			['ride', 0, 7],
			['unlogged', 7, 12],
			['ride', 12, 42]
		]);
	});

	it('ends in the same sums, to the last digit, whatever the order in which things were written down', () => {
		const random = seeded(20261125);
		for (let round = 0; round < 300; round++) {
			const pieces = invented(random);
			const expected = wheelAxis(pieces).map(({ fromM, toM, startMs }) => [startMs, fromM, toM]);
			// written down in another order, the same things bear other numbers
			const later = shuffled(pieces, random).map((piece, id) => ({ ...piece, id }));
			expect(wheelAxis(later).map(({ fromM, toM, startMs }) => [startMs, fromM, toM])).toEqual(expected);
		}
	});

	it('takes nothing without a length, or that ends before it starts', () => {
		for (const wrong of [ride(1, 0, 1, NaN), ride(1, 0, 1, -1), ride(1, 0, 1, Infinity), ride(1, 5, 4, 10)])
			expect(() => wheelAxis([wrong])).toThrow(RangeError);
		expect(wheelAxis([])).toEqual([]);
	});
});

describe('distanceReached', () => {
	it('counts a ride under way by the share of its time, unlogged distance from its instant on', () => {
		const pieces = wheelAxis([ride(1, 100, 200, 40), unlogged(1, 300, 6)]);
		expect([0, 100, 125, 200, 299, 300].map((ms) => distanceReached(pieces, ms))).toEqual([
			0, 0, 10, 40, 40, 46
		]);
	});

	it('splits distance at any instants into parts that add up', () => {
		const random = seeded(7);
		for (let round = 0; round < 200; round++) {
			const axis = wheelAxis(invented(random));
			const cuts = [-1, ...Array.from({ length: 5 }, () => random() * 25_000), 30_000].sort((a, b) => a - b);
			const parts = cuts.slice(1).map((until, index) => distanceBetween(axis, cuts[index], until));
			expect(Math.min(...parts)).toBeGreaterThanOrEqual(0);
			const whole = axis[axis.length - 1].toM;
			expect(Math.abs(parts.reduce((sum, part) => sum + part, 0) - whole)).toBeLessThan(1e-6);
		}
	});

	it('keeps the sums of builds and of the wheel together when pieces go from one build to another', () => {
		const random = seeded(99);
		for (let round = 0; round < 100; round++) {
			const pieces = invented(random).map((piece) => ({
				...piece,
				buildId: random() < 0.1 ? null : Math.floor(random() * 4)
			}));
			const ofBuilds = [0, 1, 2, 3, null].map((buildId) =>
				distanceReached(wheelAxis(pieces.filter((piece) => piece.buildId === buildId)), Infinity)
			);
			const whole = distanceReached(wheelAxis(pieces), Infinity);
			expect(Math.abs(ofBuilds.reduce((sum, part) => sum + part, 0) - whole)).toBeLessThan(1e-6);
		}
	});

	it('is not known backwards in time', () => {
		expect(distanceBetween([], 5, 4)).toBeNaN();
	});
});

describe('instantAt', () => {
	it('is the way back from distanceReached', () => {
		const axis = wheelAxis([ride(1, 100, 200, 40), unlogged(1, 300, 6), ride(2, 400, 500, 10)]);
		for (const ms of [110, 150, 199, 450])
			expect(instantAt(axis, distanceReached(axis, ms))).toBeCloseTo(ms, 9);
		expect(instantAt(axis, 43)).toBe(300);
	});

	it('takes the nearest end past the axis, and nothing of a wheel that was never ridden', () => {
		const axis = wheelAxis([ride(1, 100, 200, 40)]);
		expect([instantAt(axis, -5), instantAt(axis, 1e9)]).toEqual([100, 200]);
		expect([instantAt([], 5), instantAt(axis, NaN)]).toEqual([null, null]);
	});
});
