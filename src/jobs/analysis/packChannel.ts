import { deflateRawSync } from 'node:zlib';
import type { PackedChannel, PackedChunk } from './messages';
import { packValues } from './packValues';

const CHUNK_VALUES = 4096;
/** values of one level that become one extreme of the next */
const LEVEL_FACTOR = 16;
const SMALLEST_LEVEL = 256;
/** against the usual 6: 1 % more bytes in less time (measured on the example and real rides) */
const DEFLATE_LEVEL = 4;

/**
 * One trace in pieces that can be read alone: all values, and for quick drawing the smallest and largest
 * of each 16, 256 ... values while a level still has more than 256.
 *
 * @param name channel, unit in it
 * @param values at an even step, NaN = missing
 * @param step resolution that is kept, in the channel's unit
 */
export function packChannel(name: string, values: ArrayLike<number>, step: number): PackedChannel {
	const all = values instanceof Float64Array ? values : Float64Array.from(values);
	const chunks: PackedChunk[] = [];
	packLevel(chunks, all, step, 0, 'value');
	let lowest = all;
	let highest = all;
	for (let level = 1; lowest.length > SMALLEST_LEVEL; level++) {
		lowest = lowestOfGroups(lowest);
		highest = highestOfGroups(highest);
		packLevel(chunks, lowest, step, level, 'min');
		packLevel(chunks, highest, step, level, 'max');
	}
	return { name, length: all.length, step, chunks };
}

function packLevel(
	chunks: PackedChunk[],
	values: Float64Array,
	step: number,
	level: number,
	side: PackedChunk['side']
): void {
	for (let from = 0; from < values.length; from += CHUNK_VALUES) {
		const part = values.subarray(from, from + CHUNK_VALUES);
		const packed = deflateRawSync(packValues(part, step), { level: DEFLATE_LEVEL });
		chunks.push({ level, side, chunk: from / CHUNK_VALUES, count: part.length, packed });
	}
}

/** Missing values do not count; a group of nothing but missing ones is missing. */
function lowestOfGroups(values: Float64Array): Float64Array {
	const result = new Float64Array(Math.ceil(values.length / LEVEL_FACTOR)).fill(NaN);
	for (let i = 0; i < values.length; i++) {
		const value = values[i];
		const group = Math.floor(i / LEVEL_FACTOR);
		// infinite ones are missing as well, and nothing compares with NaN
		if (value - value === 0 && !(value >= result[group])) result[group] = value;
	}
	return result;
}

function highestOfGroups(values: Float64Array): Float64Array {
	const result = new Float64Array(Math.ceil(values.length / LEVEL_FACTOR)).fill(NaN);
	for (let i = 0; i < values.length; i++) {
		const value = values[i];
		const group = Math.floor(i / LEVEL_FACTOR);
		if (value - value === 0 && !(value <= result[group])) result[group] = value;
	}
	return result;
}
