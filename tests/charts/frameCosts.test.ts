import { describe, expect, it } from 'vitest';
import { frameCosts, quantile, type TraceEvent } from '../bench/frameCosts';

const task = (ts: number, tdur: number, tid = 1): TraceEvent => ({
	name: 'RunTask',
	ph: 'X',
	pid: 9,
	tid,
	ts,
	tdur
});
const mark = (ts: number): TraceEvent => ({ name: 'frame', ph: 'I', pid: 9, tid: 1, ts });

describe('frameCosts', () => {
	it('adds up the tasks of the page from the one that holds a mark to the one that holds the next', () => {
		const events = [
			task(0, 700),
			task(100, 3000),
			mark(150),
			task(400, 1000),
			task(500, 99, 2),
			task(900, 2000),
			mark(950)
		];
		expect(frameCosts(events)).toEqual([4]);
	});

	it('is nothing without two marks', () => {
		expect(frameCosts([task(0, 1), mark(1)])).toEqual([]);
	});
});

describe('quantile', () => {
	it('is a value that so many do not exceed', () => {
		expect(quantile([4, 1, 3, 2], 0.5)).toBe(2);
		expect(quantile([1, 2, 3, 4], 0.95)).toBe(4);
	});
});
