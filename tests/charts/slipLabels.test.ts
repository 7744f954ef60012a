import { describe, expect, it } from 'vitest';
import { slipLabels } from '$lib/charts/slipLabels';
import type { SlipMark } from '$lib/charts/strip';

const slip = (id: number, startS: number): SlipMark =>
	({ id, number: id, startS, endS: startS + 1, standing: 'unreviewed', overrunCrankDeg: 143 }) as SlipMark;
const PLACES = { placeOf: (timeS: number) => timeS, right: 1000 };
const words = ({ number }: SlipMark) => [`${number}: 143°`, `${number}`];
const texts = (slips: SlipMark[], shown = slips, selectedId: number | null = null) =>
	slipLabels(slips, shown, PLACES, words, selectedId).map(({ text }) => text);

describe('the words beside the signs of slips', () => {
	it('give number and size where nothing follows', () => {
		expect(texts([slip(1, 100), slip(2, 300)])).toEqual(['1: 143°', '2: 143°']);
	});

	it('give the number alone where the next sign is near, and nothing where even that has no room', () => {
		expect(texts([slip(1, 100), slip(2, 140)])).toEqual(['1', '2: 143°']);
		expect(texts([slip(1, 100), slip(2, 112)])).toEqual(['2: 143°']);
	});

	it('keep clear of signs that are not named themselves', () => {
		expect(texts([slip(1, 100)], [slip(1, 100), slip(9, 140)])).toEqual(['1']);
	});

	it('never leave out the number of the slip that is chosen', () => {
		expect(texts([slip(1, 100), slip(2, 112)], undefined, 1)).toEqual(['1', '2: 143°']);
	});

	it('stay within the drawing', () => {
		const [{ x, text }] = slipLabels([slip(1, 995)], [slip(1, 995)], PLACES, words, null);
		expect(x + 6 * text.length).toBeLessThanOrEqual(1000);
	});
});
