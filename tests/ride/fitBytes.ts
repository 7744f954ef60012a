import { FitEncoder } from 'fit-file-parser/encoder';

/** FIT base types by the size and sign that the tests need */
export const FIT = {
	enum: 0x00,
	sint8: 0x01,
	uint8: 0x02,
	string: 0x07,
	uint8z: 0x0a,
	sint32: 0x85,
	uint16: 0x84,
	uint32: 0x86
} as const;

const SIZES: Readonly<Record<number, number>> = {
	0x00: 1,
	0x01: 1,
	0x02: 1,
	0x0a: 1,
	0x84: 2,
	0x85: 4,
	0x86: 4
};

/** [field number, base type, value]; a string carries its size in its own length plus a zero */
export type Field = readonly [number: number, baseType: number, value: number | string];
/** [field number, bytes, developer data index] */
export type DeveloperField = readonly [number: number, value: readonly number[], index: number];

/** 2026-05-04 08:00:00 UTC in seconds of the FIT calendar (since 1989-12-31) */
export const START_FIT_S = Date.UTC(2026, 4, 4, 8) / 1000 - 631_065_600;
export const START_MS = Date.UTC(2026, 4, 4, 8);

/**
 * Writes FIT bytes one message at a time, by hand and not with the parser's own writer, so that broken,
 * compressed and developer messages can be written as well.
 */
export class FitBytes {
	private readonly data: number[] = [];
	private readonly shapes = new Map<number, string>();

	constructor(private readonly bigEndian = false) {}

	/** offset in the closed file at which the next message will begin */
	get next(): number {
		return 14 + this.data.length;
	}

	raw(...bytes: number[]): this {
		this.data.push(...bytes);
		return this;
	}

	message(
		local: number,
		global: number,
		fields: readonly Field[],
		developer: readonly DeveloperField[] = []
	): this {
		const shape = JSON.stringify([
			global,
			fields.map(sizeOf),
			developer.map(([n, v, i]) => [n, v.length, i])
		]);
		if (this.shapes.get(local) !== shape) {
			this.define(local, global, fields, developer);
			this.shapes.set(local, shape);
		}
		this.data.push(local);
		for (const field of fields) this.value(field);
		for (const [, value] of developer) this.data.push(...value);
		return this;
	}

	/** a message with a compressed timestamp, of a shape that is already defined with its timestamp first */
	compressed(local: number, offsetS: number, fields: readonly Field[]): this {
		this.data.push(0x80 | (local << 5) | (offsetS & 31));
		for (const field of fields) this.value(field);
		return this;
	}

	/** the whole file; size and checksum can be written wrong on purpose */
	close(wrong: { dataBytes?: number; checksum?: number; headerBytes?: 12 | 14 } = {}): Uint8Array {
		const headerBytes = wrong.headerBytes ?? 14;
		const header = new Uint8Array(headerBytes);
		const view = new DataView(header.buffer);
		view.setUint8(0, headerBytes);
		view.setUint8(1, 0x20);
		view.setUint16(2, 2134, true);
		view.setUint32(4, wrong.dataBytes ?? this.data.length, true);
		header.set([0x2e, 0x46, 0x49, 0x54], 8);
		if (headerBytes === 14) view.setUint16(12, FitEncoder.calculateCRC(header.subarray(0, 12)), true);
		const body = Uint8Array.from([...header, ...this.data]);
		const checksum = wrong.checksum ?? FitEncoder.calculateCRC(body);
		return Uint8Array.from([...body, checksum & 255, checksum >> 8]);
	}

	private define(
		local: number,
		global: number,
		fields: readonly Field[],
		developer: readonly DeveloperField[]
	) {
		this.data.push(0x40 | (developer.length > 0 ? 0x20 : 0) | local, 0, this.bigEndian ? 1 : 0);
		this.number(global, 2);
		this.data.push(fields.length, ...fields.flatMap((field) => [field[0], sizeOf(field)[1], field[1]]));
		if (developer.length === 0) return;
		this.data.push(developer.length, ...developer.flatMap(([n, value, index]) => [n, value.length, index]));
	}

	private value([, baseType, value]: Field) {
		if (typeof value === 'string') this.data.push(...new TextEncoder().encode(value), 0);
		else this.number(value, SIZES[baseType]);
	}

	private number(value: number, size: number) {
		const bytes = Array.from({ length: size }, (_, i) => Math.floor(value / 256 ** i) & 255);
		this.data.push(...(this.bigEndian ? bytes.reverse() : bytes));
	}
}

function sizeOf([number, baseType, value]: Field): [number, number, number] {
	const size = typeof value === 'string' ? new TextEncoder().encode(value).length + 1 : SIZES[baseType];
	return [number, size, baseType];
}

/** values of one record in the units of the ride; what is not given is not written */
export interface RecordValues {
	readonly speedMps?: number;
	readonly enhancedSpeedMps?: number;
	readonly cadenceRpm?: number;
	readonly powerW?: number;
	readonly distanceM?: number;
	readonly altitudeM?: number;
	readonly enhancedAltitudeM?: number;
	readonly temperatureC?: number;
	readonly latitudeDeg?: number;
	readonly longitudeDeg?: number;
}

const SEMICIRCLES = 2 ** 31 / 180;

/** the fields of a record after its timestamp */
export function recordFields(values: RecordValues): Field[] {
	const fields: Field[] = [];
	const add = (number: number, type: number, value: number | undefined, scale = 1, offset = 0) => {
		if (value !== undefined) fields.push([number, type, Math.round((value + offset) * scale)]);
	};
	add(0, FIT.sint32, values.latitudeDeg, SEMICIRCLES);
	add(1, FIT.sint32, values.longitudeDeg, SEMICIRCLES);
	add(2, FIT.uint16, values.altitudeM, 5, 500);
	add(4, FIT.uint8, values.cadenceRpm);
	add(5, FIT.uint32, values.distanceM, 100);
	add(6, FIT.uint16, values.speedMps, 1000);
	add(7, FIT.uint16, values.powerW);
	add(13, FIT.sint8, values.temperatureC);
	add(73, FIT.uint32, values.enhancedSpeedMps, 1000);
	add(78, FIT.uint32, values.enhancedAltitudeM, 5, 500);
	return fields;
}

export const timestamp = (second: number): Field => [253, FIT.uint32, START_FIT_S + second];

/** what a rider pedalling evenly leaves behind */
export const PEDALLING: RecordValues = { speedMps: 8, cadenceRpm: 85, powerW: 190 };

export interface RideShape {
	/** seconds of the records */
	readonly seconds?: readonly number[];
	readonly values?: (second: number) => RecordValues;
	/** sport and sub-sport numbers of the session; null = no session */
	readonly sport?: readonly [sport: number, subSport: number] | null;
	/** further messages before the session */
	readonly also?: (bytes: FitBytes) => void;
}

/** the seconds 0 to count - 1 */
export const seconds = (count: number, from = 0) => Array.from({ length: count }, (_, i) => from + i);

/** a small ride, sound unless told otherwise */
export function fitRide(shape: RideShape = {}, bytes = new FitBytes()): FitBytes {
	const at = shape.seconds ?? seconds(20);
	const sport = shape.sport === undefined ? ([2, 7] as const) : shape.sport;
	bytes.message(0, 0, [[0, FIT.enum, 4]]);
	for (const second of at) {
		bytes.message(1, 20, [timestamp(second), ...recordFields(shape.values?.(second) ?? PEDALLING)]);
	}
	shape.also?.(bytes);
	if (sport) {
		bytes.message(2, 18, [
			timestamp(Math.max(...at)),
			[2, FIT.uint32, START_FIT_S + at[0]],
			[5, FIT.enum, sport[0]],
			[6, FIT.enum, sport[1]]
		]);
	}
	return bytes;
}

/** event message: number of the event, of its type, and its data */
export function event(bytes: FitBytes, second: number, kind: number, type: number, data = 0): FitBytes {
	return bytes.message(3, 21, [
		timestamp(second),
		[0, FIT.enum, kind],
		[1, FIT.enum, type],
		[3, FIT.uint32, data]
	]);
}

export function lap(bytes: FitBytes, second: number, trigger: number): FitBytes {
	return bytes.message(4, 19, [timestamp(second), [2, FIT.uint32, START_FIT_S], [24, FIT.enum, trigger]]);
}
