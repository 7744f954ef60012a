import { describe, expect, it } from 'vitest';
import type { RiderMarksView } from '$lib/server/views';
import { createFormats } from '$lib/ui/formats';
import { lapAnswerOf, lapMeaningOf } from '../../src/routes/rides/[id]/lapAnswers';
import { markCountWords, markWords, openMarkWords } from '../../src/routes/rides/[id]/markWords';

const formats = createFormats('en-GB', 'UTC');
const form = (fields: Record<string, string>) => {
	const data = new FormData();
	for (const [name, value] of Object.entries(fields)) data.set(name, value);
	return data;
};

describe('markWords', () => {
	const riderMarks = (delayS: number): { riderMarks: RiderMarksView } => ({
		riderMarks: {
			lapsMeanSlips: true,
			marks: [{ timeS: 104, observed: true, event: { id: 7, delayS }, answer: null }],
			open: 0,
			counts: null
		}
	});

	it('says at the event how long after it the lap was pressed, and nothing at other events', () => {
		expect(markWords(riderMarks(4), 7, formats)).toBe('The rider pressed the lap 4\u00a0s later.');
		expect(markWords(riderMarks(0), 7, formats)).toBe('The rider pressed the lap at once.');
		expect(markWords(riderMarks(4), 8, formats)).toBeNull();
	});
});

describe('markCountWords', () => {
	it('names all three counts and what is still open', () => {
		const words = markCountWords({ both: 3, markOnly: 0, detectionOnly: 2, waiting: 1 }, formats);
		expect(words).toBe(
			'Slips of the reference size where this ride is observed: 3 found and marked, none marked only, 2 found only. 1 lap or event waits for an answer or a review.'
		);
	});

	it('says in one clause that nothing is decided, or that there was nothing', () => {
		const none = { both: 0, markOnly: 0, detectionOnly: 0 };
		expect(markCountWords({ ...none, waiting: 3 }, formats)).toBe(
			'Where this ride is observed nothing is decided yet: 3 laps or events wait for an answer or a review.'
		);
		expect(markCountWords({ ...none, waiting: 0 }, formats)).toContain('marked and none confirmed');
	});
});

describe('openMarkWords', () => {
	it('asks what the laps were, and nothing when all are answered', () => {
		expect(openMarkWords(0, formats)).toBeNull();
		expect(openMarkWords(1, formats)).toContain('One lap');
		expect(openMarkWords(2, formats)).toContain('2 laps');
	});
});

describe('the answers about laps', () => {
	it('are read as they stand in the form', () => {
		expect(lapMeaningOf(form({ meaning: 'yes' }))).toBe(true);
		expect(lapMeaningOf(form({ meaning: 'no' }))).toBe(false);
		expect(lapMeaningOf(form({ meaning: '' }))).toBeNull();
		expect(lapAnswerOf(form({ lap: '900.5', answer: 'something else' }))).toEqual({
			timeS: 900.5,
			answer: 'something else'
		});
		expect(lapAnswerOf(form({ lap: '3', answer: '' }))).toEqual({ timeS: 3, answer: null });
	});

	it('are refused where a form has other words', () => {
		expect(() => lapAnswerOf(form({ lap: '3', answer: 'maybe' }))).toThrow('Say');
		expect(() => lapAnswerOf(form({ lap: 'x', answer: '' }))).toThrow('lap');
	});
});
