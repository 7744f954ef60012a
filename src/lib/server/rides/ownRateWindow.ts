import { inflateRawSync } from 'node:zlib';
import { unpackValues } from '../../../jobs/analysis/unpackValues';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { LARGEST_CHUNK_BYTES } from './rideChannels';

/** Lines of a logger at its own rate, as many values as a stretch of pixels can show. */
export interface OwnRateWindow {
	/** seconds from one recorded value to the next */
	readonly sampleS: number;
	/** second of the first value */
	readonly fromS: number;
	/** recorded values in one group; 1 = the values themselves */
	readonly size: number;
	/** groups; in each line the lowest and the highest value of each, NaN = none known */
	readonly count: number;
	readonly lines: { readonly name: string; readonly low: Float32Array; readonly high: Float32Array }[];
}

interface LineRow {
	readonly sha256: string;
	readonly version: number;
	readonly name: string;
	readonly length: number;
	readonly step: number;
	readonly sampleS: number;
	readonly levels: number;
}

const CHUNK_VALUES = 4096;
const LEVEL_FACTOR = 16;
/** what one answer may hold at the most, whoever asks */
export const MOST_PIXELS = 4096;

const LINES = `SELECT sha256, version, name, length, step, sample_s AS sampleS, (SELECT max(level) FROM channel_chunk AS k
	WHERE k.sha256 = c.sha256 AND k.version = c.version AND k.name = c.name) AS levels
	FROM channel AS c WHERE sha256 = ? AND version = ? AND sample_s < 1 ORDER BY name`;

/** The names of the lines that a ride has at its own rate, and its rate; null = one value a second is all. */
export function ownRateOf(ledger: Ledger, rideId: number): { sampleS: number; names: string[] } | null {
	const lines = linesOf(ledger, rideId);
	return lines.length === 0 ? null : { sampleS: lines[0].sampleS, names: lines.map(({ name }) => name) };
}

/**
 * A stretch of a ride at the stored level that fits the pixels: between one and about two values a pixel.
 *
 * @param window seconds [from, to]; cut to the ride
 * @param pixels width that it is drawn on, 1 to MOST_PIXELS
 * @returns null when the ride has no lines at a rate of its own
 */
export function ownRateWindow(
	ledger: Ledger,
	rideId: number,
	[fromS, toS]: readonly [number, number],
	pixels: number
): OwnRateWindow | null {
	const rows = linesOf(ledger, rideId);
	if (rows.length === 0) return null;
	const [{ sampleS, length }] = rows;
	const size = groupSize((toS - fromS) / sampleS, Math.min(MOST_PIXELS, Math.max(1, pixels)));
	// groups begin at whole multiples, so that they stand still while the window moves
	const first = Math.min(Math.ceil(length / size), Math.max(0, Math.floor(fromS / sampleS / size) - 1));
	const end = Math.min(Math.ceil(length / size), Math.ceil(toS / sampleS / size) + 2);
	const count = Math.max(0, end - first);
	return {
		sampleS,
		fromS: first * size * sampleS,
		size,
		count,
		lines: rows.map((row) => {
			const level = Math.min(row.levels, Math.floor(Math.log(size) / Math.log(LEVEL_FACTOR) + 1e-9));
			const each = size / LEVEL_FACTOR ** level;
			const stored = [first * each, Math.min((first + count) * each, storedAt(row, level))] as const;
			const of = (side: 'min' | 'max') =>
				grouped(valuesOf(ledger, row, level, level === 0 ? 'value' : side, stored), each, count, side);
			return { name: row.name, low: of('min'), high: of('max') };
		})
	};
}

function linesOf(ledger: Ledger, rideId: number): LineRow[] {
	const ride = ledger.database
		.prepare<[number], { sha256: string }>('SELECT sha256 FROM ride WHERE id = ?')
		.get(rideId);
	if (!ride) return [];
	return ledger.channels.prepare<[string, number], LineRow>(LINES).all(ride.sha256, currentVersion(ledger));
}

/** The values themselves up to two a pixel, else groups of 2, 4, 8 ... of which a pixel holds one to two. */
function groupSize(samples: number, pixels: number): number {
	let size = 1;
	while (samples / size > 2 * pixels) size *= 2;
	return size;
}

function storedAt({ length }: LineRow, level: number): number {
	let count = length;
	for (let i = 0; i < level; i++) count = Math.ceil(count / LEVEL_FACTOR);
	return count;
}

/** the stored values of one level from one place to another */
function valuesOf(
	ledger: Ledger,
	row: LineRow,
	level: number,
	side: 'value' | 'min' | 'max',
	[from, to]: readonly [number, number]
): Float32Array {
	const firstChunk = Math.floor(from / CHUNK_VALUES);
	const lastChunk = Math.floor(Math.max(from, to - 1) / CHUNK_VALUES);
	const chunks = ledger.channels
		.prepare<
			[string, number, string, number, string, number, number],
			{ chunk: number; count: number; packed: Buffer }
		>(
			`SELECT chunk, count, packed FROM channel_chunk WHERE sha256 = ? AND version = ? AND name = ?
			AND level = ? AND side = ? AND chunk BETWEEN ? AND ? ORDER BY chunk`
		)
		.all(row.sha256, row.version, row.name, level, side, firstChunk, lastChunk);
	const values = new Float32Array((lastChunk - firstChunk + 1) * CHUNK_VALUES).fill(NaN);
	for (const { chunk, count, packed } of chunks) {
		const bytes = inflateRawSync(packed, { maxOutputLength: LARGEST_CHUNK_BYTES });
		unpackValues(bytes, row.step, values, (chunk - firstChunk) * CHUNK_VALUES, count);
	}
	return values.subarray(from - firstChunk * CHUNK_VALUES, Math.max(from, to) - firstChunk * CHUNK_VALUES);
}

/** lowest or highest of each so many; NaN where none of them is known */
function grouped(values: Float32Array, each: number, count: number, side: 'min' | 'max'): Float32Array {
	const result = new Float32Array(count).fill(NaN);
	for (let i = 0; i < values.length; i++) {
		const value = values[i];
		const group = Math.floor(i / each);
		if (Number.isNaN(value)) continue;
		const before = result[group];
		if (side === 'min' ? !(before <= value) : !(before >= value)) result[group] = value;
	}
	return result;
}
