import { inflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { packChannel } from '../../src/jobs/analysis/packChannel';
import { unpackValues } from '../../src/jobs/analysis/unpackValues';

const values = Float64Array.from({ length: 10_000 }, (_, i) =>
	i % 97 === 0 ? NaN : Math.round(100 * Math.sin(i / 50)) + (i === 5000 ? 900 : 0)
);
const channel = packChannel('powerW', values, 1);

function level(number: number, side: 'value' | 'min' | 'max'): number[] {
	return channel.chunks
		.filter((chunk) => chunk.level === number && chunk.side === side)
		.flatMap(({ packed, count }) => {
			const into = new Float64Array(count);
			unpackValues(inflateRawSync(packed), 1, into, 0, count);
			return [...into];
		});
}

describe('packChannel', () => {
	it('keeps every value on level 0, in chunks that can be read alone', () => {
		expect(level(0, 'value')).toEqual([...values]);
		expect(channel.chunks.filter((chunk) => chunk.level === 0).map(({ count }) => count)).toEqual([
			4096, 4096, 1808
		]);
	});

	it('keeps the extremes of each 16 values on level 1 and of each 256 on level 2', () => {
		for (const [number, width] of [
			[1, 16],
			[2, 256]
		]) {
			const lowest = level(number, 'min');
			const highest = level(number, 'max');
			expect(highest).toHaveLength(Math.ceil(values.length / width));
			highest.forEach((top, group) => {
				const known = [...values.slice(group * width, (group + 1) * width)].filter((v) => !Number.isNaN(v));
				expect(top).toBe(Math.max(...known));
				expect(lowest[group]).toBe(Math.min(...known));
			});
		}
	});

	it('never loses a single spike on the coarsest level', () => {
		const coarsest = Math.max(...channel.chunks.map((chunk) => chunk.level));
		expect(Math.max(...level(coarsest, 'max'))).toBe(values[5000]);
	});

	it('marks a group without any known value as missing', () => {
		const gap = packChannel('x', new Float64Array(600).fill(NaN), 1);
		const top = gap.chunks.find((chunk) => chunk.level === 1 && chunk.side === 'max')!;
		const into = new Float64Array(top.count);
		unpackValues(inflateRawSync(top.packed), 1, into, 0, top.count);
		expect([...into].every(Number.isNaN)).toBe(true);
	});
});
