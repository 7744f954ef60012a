import { describe, expect, it } from 'vitest';
import { lineReachesValue } from '$lib/reliability/lineReachesValue';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import { straightLine, type LinePoint } from '$lib/reliability/straightLine';
import { straightLinePrediction } from '$lib/reliability/straightLinePrediction';

/** the normal equations solved with raw sums: the naive reference */
function naiveLine(points: readonly LinePoint[]): { intercept: number; slope: number } {
	let [n, sx, sy, sxx, sxy] = [0, 0, 0, 0, 0];
	for (const { x, y } of points) {
		n++;
		sx += x;
		sy += y;
		sxx += x * x;
		sxy += x * y;
	}
	const determinant = n * sxx - sx * sx;
	return { slope: (n * sxy - sx * sy) / determinant, intercept: (sxx * sy - sx * sxy) / determinant };
}

/** tooth height in millimetres against kilometres, invented */
function worn(seed: number, count: number, slope: number, sd: number): LinePoint[] {
	const draw = randomNumbers(seed);
	return Array.from({ length: count }, (_, i) => ({
		x: 150 * i,
		y: 1.2 + slope * 150 * i + sd * draw.normal()
	}));
}

describe('straightLine', () => {
	it('agrees with the normal equations on seeded points', () => {
		for (let seed = 1; seed <= 20; seed++) {
			const points = worn(seed, 3 + seed, -2e-4, 0.01);
			const line = straightLine(points)!;
			const naive = naiveLine(points);
			expect(line.slope).toBeCloseTo(naive.slope, 10);
			expect(line.intercept).toBeCloseTo(naive.intercept, 10);
		}
	});

	it('tells no line from fewer than two different x', () => {
		expect(straightLine([])).toBeNull();
		expect(straightLine([{ x: 3, y: 1 }])).toBeNull();
		expect(
			straightLine([
				{ x: 3, y: 1 },
				{ x: 3, y: 2 }
			])
		).toBeNull();
	});

	it('knows no scatter from two points and no scatter at all from points on a line', () => {
		expect(
			straightLine([
				{ x: 0, y: 1 },
				{ x: 1, y: 3 }
			])!.residualSd
		).toBeNaN();
		const exact = straightLine([0, 1, 2, 3].map((x) => ({ x, y: 1 + 2 * x })))!;
		expect(exact.residualSd).toBe(0);
		expect(exact.slope).toBe(2);
	});

	it('counts repeats at one x as points of their own', () => {
		const once = straightLine([
			{ x: 0, y: 1 },
			{ x: 1, y: 2 }
		])!;
		const repeated = straightLine([
			{ x: 0, y: 0.9 },
			{ x: 0, y: 1.1 },
			{ x: 1, y: 1.9 },
			{ x: 1, y: 2.1 }
		])!;
		expect(repeated.slope).toBeCloseTo(once.slope, 12);
		expect(repeated.degreesOfFreedom).toBe(2);
	});

	it('refuses a coordinate that is not finite and names it', () => {
		expect(() => straightLine([{ x: NaN, y: 1 }])).toThrow(/x .* NaN/);
		expect(() => straightLine([{ x: 1, y: Infinity }])).toThrow(/y .* Infinity/);
	});
});

describe('straightLinePrediction', () => {
	it('is narrowest at the mean of x and always wider for one measurement than for the line', () => {
		const line = straightLine(worn(4, 9, -2e-4, 0.02))!;
		const width = (x: number) => {
			const got = straightLinePrediction(line, x, 0.95);
			expect(got.lower).toBeLessThan(got.lineLower);
			expect(got.upper).toBeGreaterThan(got.lineUpper);
			return got.upper - got.lower;
		};
		expect(width(line.meanX)).toBeLessThan(width(line.meanX + 300));
		expect(width(line.meanX + 300)).toBeCloseTo(width(line.meanX - 300), 12);
	});

	it('holds the next measurement as often as it says (2,000 seeded series)', () => {
		let inside = 0;
		for (let seed = 0; seed < 2000; seed++) {
			const points = worn(seed, 7, -2e-4, 0.02);
			const got = straightLinePrediction(straightLine(points.slice(0, 6))!, points[6].x, 0.9);
			if (points[6].y > got.lower && points[6].y < got.upper) inside++;
		}
		// 0.9 and four standard errors of 0.0067
		expect(Math.abs(inside / 2000 - 0.9)).toBeLessThan(0.027);
	});

	it('says that nothing bounds the line when only two points fix it', () => {
		const got = straightLinePrediction(
			straightLine([
				{ x: 0, y: 1 },
				{ x: 1, y: 3 }
			])!,
			2,
			0.95
		);
		expect(got).toEqual({
			value: 5,
			lineLower: -Infinity,
			lineUpper: Infinity,
			lower: -Infinity,
			upper: Infinity
		});
	});
});

describe('lineReachesValue', () => {
	it('is the inversion of the limits of the line (naive scan as the reference)', () => {
		const line = straightLine(worn(8, 12, -3e-4, 0.03))!;
		const got = lineReachesValue(line, 0.4, 0.9)!;
		expect(got.kind).toBe('between');
		for (const edge of [got.lower, got.upper]) {
			const there = straightLinePrediction(line, edge, 0.9);
			expect(Math.min(Math.abs(there.lineLower - 0.4), Math.abs(there.lineUpper - 0.4))).toBeLessThan(1e-9);
		}
		for (let x = -2000; x <= 8000; x += 25) {
			const there = straightLinePrediction(line, x, 0.9);
			const held = there.lineLower <= 0.4 && there.lineUpper >= 0.4;
			expect(held, `at ${x}`).toBe(x >= got.lower && x <= got.upper);
		}
	});

	it('is unbounded when the slope may as well be nought, and says so', () => {
		const line = straightLine(worn(2, 6, -2e-5, 0.03))!;
		const got = lineReachesValue(line, 0.2, 0.95)!;
		expect(got.kind).toBe('open');
		expect([got.lower, got.upper].filter((limit) => !Number.isFinite(limit))).toHaveLength(1);
		expect(straightLinePrediction(line, 1e7, 0.95).lineUpper).toBeGreaterThan(0.2);
	});

	it('knows nothing about a value that the scatter itself reaches', () => {
		const line = straightLine(worn(2, 6, 0, 0.03))!;
		expect(lineReachesValue(line, 1.2, 0.95)).toMatchObject({
			kind: 'unknown',
			lower: -Infinity,
			upper: Infinity
		});
	});

	it('needs at least four points', () => {
		expect(lineReachesValue(straightLine(worn(1, 3, -2e-4, 0.01))!, 0.4, 0.9)).toBeNull();
		expect(lineReachesValue(straightLine(worn(1, 4, -2e-4, 0.01))!, 0.4, 0.9)).not.toBeNull();
	});

	it('closes in on the crossing when the points lie on the line', () => {
		const line = straightLine([0, 1, 2, 3].map((x) => ({ x, y: 10 - x })))!;
		const got = lineReachesValue(line, 4, 0.95)!;
		expect(got.at).toBeCloseTo(6, 12);
		expect(got.lower).toBeCloseTo(6, 12);
		expect(got.upper).toBeCloseTo(6, 12);
	});

	it('says unknown for a level line that never meets the value', () => {
		const line = straightLine([0, 1, 2, 3].map((x) => ({ x, y: 5 })))!;
		expect(lineReachesValue(line, 4, 0.95)).toMatchObject({ kind: 'unknown' });
	});
});
