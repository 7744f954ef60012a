import { expect, test } from 'vitest';
import { partOfEvidence } from '$lib/server/evidence/partOfEvidence';
import { cell, ride, slip } from './rides';

const WHOLE = ride({
	totalM: 50_000,
	cells: [cell(5, 30_000), cell(7, 10_000)],
	observed: [{ fromM: 0, toM: 40_000 }],
	events: [slip({ startS: 100, atM: 1_000 }), slip({ startS: 5000, atM: 35_000 })],
	failedPickUps: [50, 6000]
});

test('The parts of a split ride add up to the whole ride', () => {
	const first = partOfEvidence(WHOLE, {
		part: 0,
		fromS: 0,
		toS: 3000,
		fromM: 0,
		totalM: 20_000,
		observedM: 20_000
	});
	const second = partOfEvidence(WHOLE, {
		part: 1,
		fromS: 3000,
		toS: Infinity,
		fromM: 20_000,
		totalM: 30_000,
		observedM: 20_000
	});
	expect([first, second].map(({ events }) => events.map(({ atM }) => atM))).toEqual([[1_000], [15_000]]);
	expect([first, second].map(({ observed }) => observed)).toEqual([
		[{ fromM: 0, toM: 20_000 }],
		[{ fromM: 0, toM: 20_000 }]
	]);
	expect([first, second].map(({ cells }) => cells.map(({ observedM }) => observedM))).toEqual([
		[15_000, 5_000],
		[15_000, 5_000]
	]);
	expect([first, second].map(({ failedPickUps }) => failedPickUps)).toEqual([[50], [6000]]);
});

test('A ride that was not split is taken as it is', () => {
	const part = { part: null, fromS: 0, toS: Infinity, fromM: 0, totalM: 50_000, observedM: 40_000 };
	expect(partOfEvidence(WHOLE, part)).toBe(WHOLE);
});
