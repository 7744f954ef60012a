import FitParser from 'fit-file-parser';
import { describe, expect, it } from 'vitest';
import { fitColumns } from '$lib/ride/fitColumns';
import { instantOf, numberOf, type FitMessage } from '$lib/ride/fitMessages';
import { fitRecords } from '$lib/ride/fitRecords';
import { splitFitParts } from '$lib/ride/splitFitParts';
import { seededChance } from '$lib/slip/seededChance';
import { FitBytes, START_FIT_S } from './fitBytes';

const NUMBERS = [0, 1, 2, 3, 4, 5, 6, 7, 13, 52, 53, 73, 78, 200];
const BASES = [0x00, 0x01, 0x02, 0x07, 0x0a, 0x0d, 0x83, 0x84, 0x85, 0x86, 0x88, 0x8b, 0x8c];
/** the base types that the FIT profile gives these fields */
const USUAL: Readonly<Record<number, [base: number, bytes: number]>> = {
	0: [0x85, 4],
	1: [0x85, 4],
	2: [0x84, 2],
	4: [0x02, 1],
	5: [0x86, 4],
	6: [0x84, 2],
	7: [0x84, 2],
	13: [0x01, 1],
	52: [0x84, 2],
	53: [0x02, 1],
	73: [0x86, 4],
	78: [0x86, 4],
	253: [0x86, 4]
};

describe('fitRecords', () => {
	it('reads every number of every record as the FIT parser does, whatever definitions say', async () => {
		let values = 0;
		for (let seed = 1; seed <= 150; seed++) {
			const bytes = drawnFile(seed);
			const { parts } = splitFitParts(bytes);
			const records = fitRecords(bytes, parts);
			const expected = await asTheParserReads(bytes);
			expect([seed, ...records.atMs]).toEqual([seed, ...expected.atMs]);
			const columns = fitColumns(records);
			for (const [name, column] of Object.entries(expected.columns)) {
				expect([seed, name, ...columns[name as 'powerW']!]).toEqual([seed, name, ...column]);
				values += column.filter((value) => !Number.isNaN(value)).length;
			}
		}
		// the files are not just missing values
		expect(values).toBeGreaterThan(10_000);
	});
});

/** A file of records and events with odd definitions: other base types and sizes, missing values, either byte order. */
function drawnFile(seed: number): Uint8Array {
	const chance = seededChance(seed);
	const upTo = (count: number) => Math.floor(count * chance.next());
	const bigEndian = chance.next() < 0.3;
	const bytes = new FitBytes(bigEndian);
	const shapes: { sizes: number[]; firstIsTime: boolean; timeAt: number }[] = [];
	let second = START_FIT_S;
	for (let step = 0; step < 60; step++) {
		const local = upTo(4);
		if (!shapes[local] || chance.next() < 0.05) {
			const global = chance.next() < 0.8 ? 20 : 21;
			const usual = chance.next() < 0.7;
			const numbers = NUMBERS.filter(() => chance.next() < 0.5);
			const timed = chance.next();
			if (timed < 0.9) numbers.splice(timed < 0.8 ? 0 : upTo(numbers.length), 0, 253);
			const fields = numbers.map((number) => {
				const own = USUAL[number];
				// what a compressed timestamp counts on from is always a whole one
				if (own && (usual || (number === 253 && seed % 2 === 0)))
					return [number, own[1] * (chance.next() < 0.1 ? 2 : 1), own[0]];
				return [number, 1 + upTo(8), BASES[upTo(BASES.length)]];
			});
			const developer = chance.next() < 0.3 ? [[upTo(4), 1 + upTo(3), 0]] : [];
			const number = bigEndian ? [global >> 8, global & 255] : [global & 255, global >> 8];
			bytes.raw(0x40 | (developer.length > 0 ? 0x20 : 0) | local, 0, bigEndian ? 1 : 0, ...number);
			bytes.raw(fields.length, ...fields.flat());
			if (developer.length > 0) bytes.raw(developer.length, ...developer.flat());
			const sizes = [...fields, ...developer].map(([, size]) => size);
			const timeAt = fields.findIndex(([n, size, base]) => n === 253 && size === 4 && base === 0x86);
			shapes[local] = { sizes, firstIsTime: fields[0]?.[0] === 253, timeAt };
		}
		const { sizes, firstIsTime, timeAt } = shapes[local];
		second += upTo(3);
		const compressed = seed % 2 === 0 && chance.next() < 0.3;
		bytes.raw(compressed ? 0x80 | (local << 5) | (second & 31) : local);
		sizes.forEach((size, i) => {
			if (compressed && i === 0 && firstIsTime) return;
			const time = [second & 255, (second >> 8) & 255, (second >> 16) & 255, (second >>> 24) & 255];
			const missing = chance.next() < 0.15;
			const drawn = Array.from({ length: size }, () => (missing ? 255 : upTo(256)));
			bytes.raw(...(i === timeAt && !missing ? (bigEndian ? time.reverse() : time) : drawn));
		});
	}
	return bytes.close();
}

/** The same with an object a record, as the FIT parser gives it. */
async function asTheParserReads(bytes: Uint8Array) {
	const parser = new FitParser({ mode: 'list', force: true });
	const parsed = (await parser.parseAsync(Uint8Array.from(bytes).buffer)) as unknown as {
		messages: Record<string, FitMessage[] | undefined>;
	};
	const records = parsed.messages.record ?? [];
	const first = (...names: string[]) =>
		records.map((record) => names.map((name) => numberOf(record, name)).find((v) => !Number.isNaN(v)) ?? NaN);
	const fraction = first('fractional_cadence');
	const cadence = first('cadence').map((whole, i) =>
		Number.isNaN(fraction[i]) ? whole : whole + fraction[i]
	);
	const otherCadence = first('cadence256');
	return {
		atMs: records.map((record) => instantOf(record, 'timestamp')),
		columns: {
			speedMps: first('speed', 'enhanced_speed'),
			distanceM: first('distance'),
			cadenceRpm: cadence.map((rpm, i) => (Number.isNaN(rpm) ? otherCadence[i] : rpm)),
			powerW: first('power'),
			altitudeM: first('altitude', 'enhanced_altitude'),
			temperatureC: first('temperature'),
			latitudeDeg: first('position_lat'),
			longitudeDeg: first('position_long')
		}
	};
}
