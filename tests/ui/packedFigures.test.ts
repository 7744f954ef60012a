import { expect, it } from 'vitest';
import { figuresText, packFigures, unpackFigures } from '$lib/server/figures/figureText';
import { PackedFigures } from '$lib/ui/packedFigures';
import { transport } from '../../src/hooks';

const FIGURES = {
	name: 'Müller </script> "ring"',
	limits: { lower: -0, upper: Infinity, confidence: NaN },
	notSaid: undefined,
	lines: [{ atM: 12.345678901234567 }, { atM: 5e-324 }],
	byWheel: new Map([[3, new Set(['a'])]]),
	at: new Date(0)
};

it('figures come out of their bytes as they went in, to the last bit', () => {
	expect(unpackFigures(packFigures(FIGURES))).toStrictEqual(FIGURES);
	expect(Object.is((unpackFigures(packFigures(FIGURES)) as typeof FIGURES).limits.lower, -0)).toBe(true);
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
