import { describe, expect, it } from 'vitest';
import { riderMarkCounts, type JudgedEvent, type JudgedMark } from '$lib/slip/riderMarkCounts';

const mark = (more: Partial<JudgedMark> = {}): JudgedMark => ({
	observed: true,
	answer: null,
	event: null,
	...more
});
const event = (verdict: JudgedEvent['verdict'], inRate = true): JudgedEvent => ({ inRate, verdict });

describe('riderMarkCounts', () => {
	it('counts confirmed slips with a lap, without one, and laps that a person says were slips', () => {
		const counts = riderMarkCounts(
			[mark({ event: 0 }), mark({ answer: 'a slip was felt' }), mark({ answer: 'something else' })],
			[event('confirmed'), event('confirmed'), event('rejected')]
		);
		expect(counts).toEqual({ both: 1, markOnly: 1, detectionOnly: 1, waiting: 0 });
	});

	it('holds what is not reviewed or answered apart instead of guessing', () => {
		expect(riderMarkCounts([mark({ event: 0 }), mark()], [event(null)])).toEqual({
			both: 0,
			markOnly: 0,
			detectionOnly: 0,
			waiting: 2
		});
	});

	it('leaves out laps and events that the observed stretches could not speak about', () => {
		const counts = riderMarkCounts(
			[mark({ observed: false, answer: 'a slip was felt' }), mark({ event: 0 })],
			[event('confirmed', false), event(null, false)]
		);
		expect(counts).toEqual({ both: 0, markOnly: 0, detectionOnly: 0, waiting: 0 });
	});
});
