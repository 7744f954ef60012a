import { describe, expect, it } from 'vitest';
import type { EventView } from '$lib/server/views';
import { createFormats } from '$lib/ui/formats';
import { slipMarks } from '../../src/routes/rides/[id]/slipMarks';

const event = (id: number, strength: number): EventView => ({
	id,
	startS: 10 * id,
	endS: 10 * id + 2,
	startedAt: '2026-05-04T08:00:00Z',
	kind: 'slip',
	overrunCrankDeg: { value: 120, lower: 100, upper: 140 },
	overrunHubDeg: 300,
	gear: null,
	hubTorqueNm: null,
	powerLost: null,
	strength,
	observed: true,
	atM: 100,
	buildDistanceM: null,
	reasons: [],
	verdict: null
});

describe('slipMarks', () => {
	it('numbers the events as the table does and gives as many strokes as the word for their signs has', () => {
		const formats = createFormats('en-GB', 'UTC');
		const marks = slipMarks([event(7, 0.2), event(9, 0.896), event(12, 0.95), event(13, NaN)], formats);
		expect(marks.map(({ number, strokes }) => [number, strokes])).toEqual([
			[1, 1],
			// printed as 0.90, which is strong
			[2, 3],
			[3, 3],
			[4, 0]
		]);
		expect(marks[0].overrunCrankDeg).toBe(120);
	});
});
