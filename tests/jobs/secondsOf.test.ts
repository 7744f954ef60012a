import { describe, expect, it } from 'vitest';
import { secondsOf } from '../../src/jobs/analysis/secondsOf';

describe('secondsOf', () => {
	it('takes the nearest recorded value for each second', () => {
		const channel = { timeS: Float64Array.of(0, 1.4, 2.1), value: Float64Array.of(10, 11, 12) };
		expect([...secondsOf(channel, 4)]).toEqual([10, 11, 12, 12]);
	});

	it('leaves seconds missing that are far from every record', () => {
		const channel = { timeS: Float64Array.of(0, 10), value: Float64Array.of(1, 2) };
		expect([...secondsOf(channel, 12)]).toEqual([1, 1, 1, NaN, NaN, NaN, NaN, NaN, 2, 2, 2, 2]);
	});

	it('gives nothing but missing values for an empty channel', () => {
		const channel = { timeS: new Float64Array(), value: new Float64Array() };
		expect([...secondsOf(channel, 2)]).toEqual([NaN, NaN]);
	});
});
