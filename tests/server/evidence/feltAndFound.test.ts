import { expect, test } from 'vitest';
import { feltAndFound } from '$lib/server/evidence/feltAndFound';
import type { MarkedRide } from '$lib/server/marks/markedRides';
import { createFormats } from '$lib/ui/formats';
import { feltWords } from '$lib/ui/feltWords';
import { ride } from './rides';

const formats = createFormats('en-GB', 'UTC');

/** so many slips marked and found, marked only, found only; laps 100 s apart */
function marked(both: number, markOnly: number, foundOnly: number, observed = true): MarkedRide {
	const events = Array.from({ length: both + foundOnly }, (_, index) => ({
		id: index + 1,
		startS: 100 * (index + 1),
		verdict: 'confirmed' as const,
		inRate: true
	}));
	return {
		events,
		marks: [
			...events.slice(0, both).map(({ id, startS }) => ({
				timeS: startS + 5,
				observed,
				event: { id, delayS: 5 },
				answer: null
			})),
			...Array.from({ length: markOnly }, (_, index) => ({
				timeS: 10_000 + index,
				observed,
				event: null,
				answer: { answer: 'a slip was felt' as const, by: 'R1', at: '' }
			}))
		]
	};
}

test("Slips on both lists, on one and on the other give Chapman's estimate as a lower bound", () => {
	const one = ride({});
	const felt = feltAndFound([one], new Map([[one.rideId, marked(8, 2, 6)]]))!;
	// Chapman 1951: (14 + 1) (10 + 1) / (8 + 1) - 1
	expect(felt.total).toBeCloseTo((15 * 11) / 9 - 1, 9);
	expect(felt).toMatchObject({ both: 8, markOnly: 2, detectionOnly: 6, seen: 16, fewOnBoth: false });
	expect(felt.lower!).toBeGreaterThanOrEqual(16);
	expect(feltWords(felt, formats).join(' ')).toContain('It is a lower bound');
	expect(feltWords(felt, formats).join(' ')).not.toContain('Fewer than 7');
});

test('Few slips on both lists are called a hint; none on both say nothing', () => {
	const one = ride({});
	const felt = (list: MarkedRide) => feltAndFound([one], new Map([[one.rideId, list]]))!;
	expect(feltWords(felt(marked(2, 1, 1)), formats).join(' ')).toContain('leans on chance');
	const apart = felt(marked(0, 3, 4));
	expect(apart).toMatchObject({ total: null, upper: null });
	expect(feltWords(apart, formats).join(' ')).toContain('No slip is on both lists');
	const none = felt(marked(0, 0, 0));
	expect(feltWords(none, formats).join(' ')).toContain('say nothing about what both missed');
	// laps and events that wait are not "nothing marked"
	const waiting = feltWords({ ...none, waiting: 36 }, formats).join(' ');
	expect(waiting).toMatch(/nothing is decided yet: 36 laps or events wait for an answer or a review\.$/);
	expect(waiting).not.toContain('nothing was marked');
});

test('A lap where nothing was observed is in no list, and a ride that says nothing of laps is left out', () => {
	const [said, silent] = [ride({}), ride({})];
	const felt = feltAndFound([said, silent], new Map([[said.rideId, marked(0, 3, 2, false)]]))!;
	expect(felt).toMatchObject({ rides: 1, observedM: 40_000, markOnly: 0, detectionOnly: 2 });
	expect(feltAndFound([silent], new Map())).toBeNull();
});

test('Of a split ride each build takes the laps and slips of its own part', () => {
	const first = ride({ fromS: 0, toS: 450 });
	const second = { ...first, fromS: 450, toS: Infinity };
	const lists = new Map([[first.rideId, marked(4, 2, 5)]]);
	expect(feltAndFound([first], lists)).toMatchObject({ both: 4, markOnly: 0, detectionOnly: 0 });
	expect(feltAndFound([second], lists)).toMatchObject({ both: 0, markOnly: 2, detectionOnly: 5 });
});
