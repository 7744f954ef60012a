import fitDecoder, { type RawRecord } from 'fit-decoder';

/** What a ride should hold, read by another library and scaled here from the FIT profile's figures. */
export interface Expected {
	readonly timeS: number[];
	readonly channels: Record<string, number[]>;
	readonly marksS: number[];
	readonly shifts: { timeS: number; rear: number; rearTeeth: number; front: number; frontTeeth: number }[];
	readonly startedAtMs: number;
}

/** the value that means "missing" for each base type (FIT protocol, table of base types) */
const INVALID: Readonly<Record<number, number>> = {
	0x00: 0xff,
	0x01: 0x7f,
	0x02: 0xff,
	0x0a: 0,
	0x83: 0x7fff,
	0x84: 0xffff,
	0x85: 0x7fffffff,
	0x86: 0xffffffff
};

/** field numbers of a record, scale and offset (FIT profile, message record) */
const FIELDS = {
	speedMps: [
		[6, 1000, 0],
		[73, 1000, 0]
	],
	distanceM: [[5, 100, 0]],
	cadenceRpm: [[4, 1, 0]],
	powerW: [[7, 1, 0]],
	altitudeM: [
		[2, 5, 500],
		[78, 5, 500]
	],
	temperatureC: [[13, 1, 0]],
	latitudeDeg: [[0, 2 ** 31 / 180, 0]],
	longitudeDeg: [[1, 2 ** 31 / 180, 0]]
} as const;

/**
 * Reads a sound FIT file with the second decoder.
 * @throws when that decoder does not take the file (a bad checksum, for one)
 */
export function secondDecoder(file: Uint8Array): Expected {
	const { records } = fitDecoder.fit2json(Uint8Array.from(file).buffer);
	const of = (number: number) => records.filter((record) => record.globalMessageNumber === number);
	const points = of(20);
	const firstS = field(points[0], 253);
	const timeS = (record: RawRecord) => field(record, 253) - firstS;
	const channels: Record<string, number[]> = {};
	for (const [name, ways] of Object.entries(FIELDS)) {
		channels[name] = points.map((record) => {
			for (const [number, scale, offset] of ways) {
				const value = field(record, number);
				if (!Number.isNaN(value)) return value / scale - offset;
			}
			return NaN;
		});
	}
	return {
		startedAtMs: (firstS + 631_065_600) * 1000,
		timeS: points.map(timeS),
		channels,
		marksS: of(19)
			.filter((lap) => field(lap, 24) === 0)
			.map(timeS),
		shifts: of(21)
			.filter((event) => field(event, 0) === 42 || field(event, 0) === 43)
			.map((event) => {
				const [rear, rearTeeth, front, frontTeeth] = [0, 1, 2, 3].map(
					(byte) => Math.floor(field(event, 3) / 256 ** byte) % 256
				);
				return { timeS: timeS(event), rear, rearTeeth, front, frontTeeth };
			})
	};
}

function field(record: RawRecord, number: number): number {
	const found = record.fields.find(({ recordNumber }) => recordNumber === number);
	if (!found || typeof found.data !== 'number' || found.data === INVALID[found.baseType]) return NaN;
	return found.data;
}
