import { encode } from 'uqr';
import { describe, expect, it } from 'vitest';
import { qrDrawing } from '$lib/server';

/** Which modules a path of "Mx yhLv1Hxz" pieces covers. */
function modules(path: string, size: number): boolean[][] {
	const drawn = Array.from({ length: size }, () => Array<boolean>(size).fill(false));
	for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H\d+z/g))
		for (let i = 0; i < Number(length); i++) drawn[Number(y)][Number(x) + i] = true;
	return drawn;
}

describe('qrDrawing', () => {
	const text = `https://ledger.example.org/come#${'A1b2C3d4_-'.repeat(4)}xyz`;

	it('draws every dark module and no other, with the quiet zone of four that ISO/IEC 18004 asks for', () => {
		const { size, path } = qrDrawing(text);
		const drawn = modules(path, size);
		expect(drawn).toEqual(encode(text, { ecc: 'M', border: 4 }).data);
		const edge = drawn.flatMap((row, y) =>
			row.filter((_, x) => Math.min(x, y, size - 1 - x, size - 1 - y) < 4)
		);
		expect(edge.some(Boolean)).toBe(false);
		// the finder pattern of the first corner
		expect(drawn[4].slice(4, 12)).toEqual([true, true, true, true, true, true, true, false]);
		expect((size - 8 - 17) % 4).toBe(0);
	});

	it('is nothing but a path', () => {
		expect(qrDrawing('"><script>').path).toMatch(/^[MhvHz\d ]+$/);
	});
});
