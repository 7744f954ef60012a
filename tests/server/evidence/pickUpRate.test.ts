import { expect, test } from 'vitest';
import { pickUpRate } from '$lib/server/evidence/pickUpRate';
import { createFormats } from '$lib/ui/formats';
import { pickUpWords } from '$lib/ui/pickUpWords';
import { cell, ride } from './rides';

const formats = createFormats('en-GB', 'UTC');
const ridden = (pickUps: number, failed: number[]) =>
	ride({ cells: [{ ...cell(5, 40_000), observedPickUps: pickUps }], failedPickUps: failed });

test("Failed pick-ups per 1000 observed ones have Garwood's limits", () => {
	const rate = pickUpRate([ridden(300, [100, 900]), ridden(200, [50])]);
	expect(rate).toMatchObject({ failed: 3, pickUps: 500, perThousand: 6 });
	// Garwood 1936: 3 events, 95 %: 0.6187 to 8.7673, on 0.5 thousand
	expect(rate.lower).toBeCloseTo(0.6187 / 0.5, 3);
	expect(rate.upper!).toBeCloseTo(8.7673 / 0.5, 3);
	expect(pickUpWords(rate, formats)).toContain(
		'3 of 500 observed pick-ups after coasting failed: 6.0 per 1000'
	);
});

test('None found bounds the rate, and none observed gives no figure', () => {
	const none = pickUpRate([ridden(400, [])]);
	expect(pickUpWords(none, formats)).toContain('at most 9.2 per 1000');
	expect(pickUpRate([])).toMatchObject({ perThousand: null, upper: null });
	expect(pickUpWords(pickUpRate([]), formats)).toBe('No pick-up after coasting was observed.');
});
