import { describe, expect, it } from 'vitest';
import { frameCosts, frameSplit, quantile, type TraceEvent } from '../bench/frameCosts';

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

	it('knows tasks by both of their names', () => {
		const events = [task(0, 700), mark(1), task(5000, 700), mark(5001)];
		const named = events.map((event) =>
			event.name === 'RunTask' ? { ...event, name: 'ThreadControllerImpl::RunTask' } : event
		);
		expect(frameCosts(named)).toEqual(frameCosts(events));
		expect(frameCosts(named)).toEqual([0.7]);
	});

	it('is nothing without two marks', () => {
		expect(frameCosts([task(0, 1), mark(1)])).toEqual([]);
	});
});

describe('frameSplit', () => {
	const work = (name: string, ts: number, dur: number): TraceEvent => ({
		...task(ts, dur),
		name,
		dur
	});

	it('counts time for the innermost named work, and what is left of a task as other', () => {
		const events = [
			mark(10),
			work('RunTask', 0, 10_000),
			work('FireAnimationFrame', 1000, 6000),
			work('FunctionCall', 2000, 4000),
			work('MinorGC', 3000, 1000),
			work('Layout', 8000, 500),
			work('RunTask', 20_000, 2000),
			work('Commit', 20_000, 1500),
			work('RunTask', 30_000, 5000),
			mark(30_010)
		];
		expect(frameSplit(events)).toEqual({
			script: 5,
			'clearing away': 1,
			style: 0,
			layout: 0.5,
			paint: 0,
			layers: 1.5,
			other: 4
		});
		const sum = Object.values(frameSplit(events)).reduce((a, b) => a + b);
		expect(sum).toBeCloseTo(frameCosts(events)[0], 9);
	});

	it('is a mean over frames', () => {
		const frame = (ts: number) => [work('RunTask', ts, 4000), mark(ts + 1)];
		expect(frameSplit([...frame(0), ...frame(5000), ...frame(10_000)]).other).toBe(4);
	});
});

describe('quantile', () => {
	it('is a value that so many do not exceed', () => {
		expect(quantile([4, 1, 3, 2], 0.5)).toBe(2);
		expect(quantile([1, 2, 3, 4], 0.95)).toBe(4);
	});
});
