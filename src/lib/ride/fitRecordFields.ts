/** Numbers of a record that are read (FIT profile, message record): field, base type, scale and offset. */
const FIELDS = {
	position_lat: { number: 0, base: 'sint32', scale: 1, offset: 0 },
	position_long: { number: 1, base: 'sint32', scale: 1, offset: 0 },
	altitude: { number: 2, base: 'uint16', scale: 5, offset: -500 },
	cadence: { number: 4, base: 'uint8', scale: 1, offset: 0 },
	distance: { number: 5, base: 'uint32', scale: 100, offset: 0 },
	speed: { number: 6, base: 'uint16', scale: 1000, offset: 0 },
	power: { number: 7, base: 'uint16', scale: 1, offset: 0 },
	temperature: { number: 13, base: 'sint8', scale: 1, offset: 0 },
	cadence256: { number: 52, base: 'uint16', scale: 256, offset: 0 },
	fractional_cadence: { number: 53, base: 'uint8', scale: 128, offset: 0 },
	enhanced_speed: { number: 73, base: 'uint32', scale: 1000, offset: 0 },
	enhanced_altitude: { number: 78, base: 'uint32', scale: 5, offset: -500 }
} as const;

export type FitNumberName = keyof typeof FIELDS;

/** Base types by their code in a definition (FIT protocol, base types). Enum and byte are written for uint8 as well. */
const CODES: Readonly<Record<Base, readonly number[]>> = {
	uint8: [0x02, 0x00, 0x0d],
	sint8: [0x01],
	uint16: [0x84],
	sint32: [0x85],
	uint32: [0x86]
};
const BYTES: Readonly<Record<Base, number>> = { uint8: 1, sint8: 1, uint16: 2, sint32: 4, uint32: 4 };

type Base = (typeof FIELDS)[FitNumberName]['base'];

/** Degrees of one of the 2^32 parts into which FIT divides the circle. */
const SEMICIRCLE_DEG = 180 / 2 ** 31;

/** A field of a record's definition: where it lies behind the header, and how it comes into its column. */
export interface FieldToRead {
	readonly at: number;
	/** puts the value into its row; a value that stands for "missing" changes nothing */
	readonly read: (view: DataView, at: number, little: boolean, row: number) => void;
}

/**
 * Which fields of a record's definition are read. A field of another base type than the profile's is none, and of
 * two fields of one number the later one counts, as with the parser.
 *
 * @param view the upload
 * @param from first byte of the definition's fields
 * @param to one past their last byte
 * @param column the column of a field, made when it is first needed
 */
export function fieldsToRead(
	view: DataView,
	from: number,
	to: number,
	column: (name: FitNumberName) => Float64Array
): FieldToRead[] {
	const fields: FieldToRead[] = [];
	let offset = 0;
	for (let field = from; field < to; field += 3) {
		const number = view.getUint8(field);
		const size = view.getUint8(field + 1);
		const code = view.getUint8(field + 2);
		const at = offset;
		offset += size;
		const name = NAMES.get(number);
		if (!name) continue;
		const { base, scale, offset: zero } = FIELDS[name];
		if (!CODES[base].includes(code) || size < BYTES[base] || size % BYTES[base] !== 0) continue;
		fields.push({ at, read: READERS[base](column(name), scale, zero) });
	}
	return fields;
}

const NAMES: ReadonlyMap<number, FitNumberName> = new Map(
	(Object.keys(FIELDS) as FitNumberName[]).map((name) => [FIELDS[name].number, name])
);

type Reader = (values: Float64Array, scale: number, zero: number) => FieldToRead['read'];

/** Each leaves out the value that means "missing" in its base type. */
const READERS: Readonly<Record<Base, Reader>> = {
	uint8: (values, scale, zero) => (view, at, _, row) => {
		const value = view.getUint8(at);
		if (value !== 0xff) values[row] = value / scale + zero;
	},
	sint8: (values, scale, zero) => (view, at, _, row) => {
		const value = view.getInt8(at);
		if (value !== 0x7f) values[row] = value / scale + zero;
	},
	uint16: (values, scale, zero) => (view, at, little, row) => {
		const value = view.getUint16(at, little);
		if (value !== 0xffff) values[row] = value / scale + zero;
	},
	sint32: (values) => (view, at, little, row) => {
		const value = view.getInt32(at, little);
		if (value !== 0x7fffffff) values[row] = value * SEMICIRCLE_DEG;
	},
	uint32: (values, scale, zero) => (view, at, little, row) => {
		const value = view.getUint32(at, little);
		if (value !== 0xffffffff) values[row] = value / scale + zero;
	}
};
