import { describe, expect, it } from 'vitest';
import { matchRiderMarks } from '$lib/slip/matchRiderMarks';

const at = (...startS: number[]) => startS.map((s) => ({ startS: s }));

describe('matchRiderMarks', () => {
	it('takes a lap within 15 s after an onset to mean that event, not before and not later', () => {
		expect(matchRiderMarks([100, 115], at(100))).toEqual([{ mark: 0, event: 0, delayS: 0 }]);
		expect(matchRiderMarks([115], at(100))).toEqual([{ mark: 0, event: 0, delayS: 15 }]);
		expect(matchRiderMarks([115.1], at(100))).toEqual([]);
		expect(matchRiderMarks([99.9], at(100))).toEqual([]);
	});

	it('prefers the nearest event before the lap', () => {
		expect(matchRiderMarks([110], at(98, 106, 111))).toEqual([{ mark: 0, event: 1, delayS: 4 }]);
	});

	it('gives one lap one event: two laps after two slips mean both', () => {
		expect(matchRiderMarks([108, 110], at(100, 105))).toEqual([
			{ mark: 0, event: 1, delayS: 3 },
			{ mark: 1, event: 0, delayS: 10 }
		]);
	});

	it('leaves the second of two laps open when there is one event', () => {
		expect(matchRiderMarks([104, 106], at(100))).toEqual([{ mark: 0, event: 0, delayS: 4 }]);
	});

	it('does not depend on the order of laps and events', () => {
		const pairs = (marks: number[], events: { startS: number }[]) =>
			matchRiderMarks(marks, events).map(({ mark, event }) => [marks[mark], events[event].startS]);
		expect(pairs([300, 104], at(295, 100))).toEqual(pairs([104, 300], at(100, 295)));
	});

	it('has nothing to match without laps or events', () => {
		expect(matchRiderMarks([], at(5))).toEqual([]);
		expect(matchRiderMarks([5], [])).toEqual([]);
	});
});
