import { expect, it } from 'vitest';
import { figuresText, packFigures, unpackFigures } from '$lib/server/figures/figureText';
import { PackedFigures } from '$lib/ui/packedFigures';
import { transport } from '../../src/hooks';

const FIGURES = {
	name: 'Müller </script> "ring"',
	limits: { lower: -0, upper: Infinity, confidence: NaN },
	notSaid: undefined,
	lines: [{ atM: 12.345678901234567 }, { atM: 5e-324 }],
	steps: [0, 1, 2, 3, 4].map((atM) => ({
		atM,
		value: -0,
		of: { wheels: [1, 2, 3, 4].map((id) => ({ id, rate: atM / id })) }
	})),
	byWheel: new Map([[3, new Set(['a'])]]),
	at: new Date(0)
};

it('figures come out of their bytes as they went in, to the last bit', () => {
	expect(unpackFigures(packFigures(FIGURES))).toStrictEqual(FIGURES);
	expect(Object.is((unpackFigures(packFigures(FIGURES)) as typeof FIGURES).limits.lower, -0)).toBe(true);
});

it('many figures are a third as long as with every name beside them', () => {
	const steps = Array.from({ length: 1000 }, (_, place) => ({
		atM: 1000 * place,
		eventId: place + 7,
		count: place + 1
	}));
	expect(figuresText({ steps }).length).toBeLessThan(JSON.stringify({ steps }).length / 3);
});

it('the text of figures is the same wherever they were computed', () => {
	const sent = unpackFigures(packFigures(FIGURES));
	expect(figuresText(sent)).toBe(figuresText(FIGURES));
});

it('the page reads what its server held', () => {
	const { encode, decode } = transport.PackedFigures;
	const held = new PackedFigures(figuresText(FIGURES), FIGURES);
	expect(held.figures).toBe(FIGURES);
	const came = decode(encode(held)) as PackedFigures<typeof FIGURES>;
	expect(came.figures).toStrictEqual(FIGURES);
	expect(came.figures).toBe(came.figures);
	expect(encode({ figures: 1 })).toBe(false);
});
