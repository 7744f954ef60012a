import { deflateRawSync } from 'node:zlib';
import type { PackedChannel, PackedChunk } from './messages';
import { packValues } from './packValues';

const CHUNK_VALUES = 4096;
/** values of one level that become one extreme of the next */
const LEVEL_FACTOR = 16;
const SMALLEST_LEVEL = 256;

/**
 * One trace in pieces that can be read alone: all values, and for quick drawing the smallest and largest
 * of each 16, 256 ... values while a level still has more than 256.
 *
 * @param name channel, unit in it
 * @param values one a second, NaN = missing
 * @param step resolution that is kept, in the channel's unit
 */
export function packChannel(name: string, values: ArrayLike<number>, step: number): PackedChannel {
	const chunks = packLevel(values, step, 0, 'value');
	let lowest: ArrayLike<number> = values;
	let highest: ArrayLike<number> = values;
	for (let level = 1; lowest.length > SMALLEST_LEVEL; level++) {
		lowest = extremes(lowest, Math.min);
		highest = extremes(highest, Math.max);
		chunks.push(...packLevel(lowest, step, level, 'min'), ...packLevel(highest, step, level, 'max'));
	}
	return { name, length: values.length, step, chunks };
}

function packLevel(
	values: ArrayLike<number>,
	step: number,
	level: number,
	side: PackedChunk['side']
): PackedChunk[] {
	const chunks: PackedChunk[] = [];
	for (let from = 0; from < values.length; from += CHUNK_VALUES) {
		const part = Array.prototype.slice.call(values, from, from + CHUNK_VALUES) as number[];
		const packed = deflateRawSync(packValues(part, step), { level: 6 });
		chunks.push({ level, side, chunk: from / CHUNK_VALUES, count: part.length, packed });
	}
	return chunks;
}

/** Missing values do not count; a group of nothing but missing ones is missing. */
function extremes(values: ArrayLike<number>, choose: (a: number, b: number) => number): Float64Array {
	const result = new Float64Array(Math.ceil(values.length / LEVEL_FACTOR)).fill(NaN);
	for (let index = 0; index < values.length; index++) {
		if (!Number.isFinite(values[index])) continue;
		const group = Math.floor(index / LEVEL_FACTOR);
		result[group] = Number.isNaN(result[group]) ? values[index] : choose(result[group], values[index]);
	}
	return result;
}
