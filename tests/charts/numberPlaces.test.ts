import { describe, expect, it } from 'vitest';
import { numberPlaces, RING, type NumberedSign } from '$lib/charts/numberPlaces';

const sign = (number: number, x: number, y: number): NumberedSign => ({
	id: 100 + number,
	number,
	x,
	y,
	overrunCrankDeg: 90
});

/** pixels that a number covers: digits of 8, 10 high */
const covers = ({ x, y }: { x: number; y: number }, digits: number) => ({
	left: x,
	right: x + 8 * digits,
	top: y - 10,
	bottom: y
});

describe('numberPlaces', () => {
	it('writes a number to the right of a sign that stands alone', () => {
		const [place] = numberPlaces([sign(3, 50, 60)], null);
		expect(place.x).toBeGreaterThan(50);
		expect(place.y).toBe(64);
	});

	it('writes no number over another or over a sign, where three slips lie side by side', () => {
		const signs = [sign(5, 50, 60), sign(6, 52, 62), sign(17, 66, 60)];
		const boxes = numberPlaces(signs, null).map((place, i) => covers(place, String(signs[i].number).length));
		boxes.forEach((box, i) => {
			for (const other of boxes.slice(i + 1))
				expect(
					box.left < other.right && other.left < box.right && box.top < other.bottom && other.top < box.bottom
				).toBe(false);
			for (const { x, y } of signs)
				expect(box.left < x && x < box.right && box.top < y && y < box.bottom).toBe(false);
		});
		expect(boxes.map(({ left, top }) => `${left} ${top}`)).toHaveLength(
			new Set(boxes.map(({ left, top }) => `${left} ${top}`)).size
		);
	});

	it('keeps the number of the chosen sign outside its ring', () => {
		const [, place] = numberPlaces([sign(5, 50, 60), sign(6, 80, 60)], 106);
		expect(place.x).toBeGreaterThanOrEqual(80 + RING);
	});
});
