import { describe, expect, it } from 'vitest';
import { firstLook, installExample } from '$lib/server';
import { placeOf } from '../../src/routes/first-look/placeOf';
import { STEPS, askedStep } from '../../src/routes/first-look/steps';
import { freshLedger } from './testLedger';

describe('firstLook', () => {
	it('leads nowhere in a ledger without the example', () => {
		const { ledger } = freshLedger();
		expect(firstLook(ledger)).toEqual({ slip: null, before: null, after: null, verdicts: 0, filesLeft: 0 });
	});

	it('leads from the build that came in to the newest one, and says how many rides are not read yet', async () => {
		const { ledger, actor } = freshLedger();
		await installExample(ledger, actor);
		const { before, after, slip, filesLeft } = firstLook(ledger);
		const name = (id: number | null) =>
			ledger.database.prepare('SELECT name FROM build WHERE id = ?').pluck().get(id);
		expect(name(before)).toBe('Original');
		expect(name(after)).toBe('Retrofit');
		expect(slip).toBeNull();
		expect(filesLeft).toBeGreaterThan(30);
	});
});

describe('placeOf', () => {
	const look = { slip: { rideId: 7, eventId: 9 }, before: 1, after: 3, verdicts: 0, filesLeft: 0 };

	it('has a page for each step, which shows the band of that step', () => {
		STEPS.forEach((_, i) => {
			const place = new URL(placeOf(i + 1, look)!, 'http://ledger.invalid');
			expect(askedStep(place.searchParams)).toBe(i + 1);
		});
	});

	it('has none for a step that is not there, or whose rides are not read yet', () => {
		expect(placeOf(0, look)).toBeNull();
		expect(placeOf(STEPS.length + 1, look)).toBeNull();
		expect(placeOf(NaN, look)).toBeNull();
		expect(placeOf(1, { ...look, slip: null })).toBeNull();
	});
});

describe('askedStep', () => {
	it('takes no number that is not a step', () => {
		for (const look of ['', '0', '8', '1.5', '<b>'])
			expect(askedStep(new URLSearchParams({ look }))).toBeNull();
	});
});
