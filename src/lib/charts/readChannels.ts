/** Traces of one ride as the server sends them, NaN = not known. */
export interface RideTraces {
	/** values in each trace; of the whole ride: index = seconds from the first record */
	readonly length: number;
	readonly traces: Readonly<Record<string, Float32Array>>;
	/** further facts that the answer states */
	readonly facts?: Readonly<Record<string, unknown>>;
}

/**
 * Reads what /rides/ID/channels sends: a little-endian uint32 with the length of a JSON header, the
 * header itself ({ length, names }, padded to a multiple of four bytes), then one Float32Array of
 * `length` for each name.
 *
 * @throws RangeError that says what does not fit, when the answer is cut short or no such answer at all
 */
export function readChannels(bytes: ArrayBuffer): RideTraces {
	if (bytes.byteLength < 4) throw new RangeError(`channels: ${bytes.byteLength} bytes are no header`);
	const headerLength = new DataView(bytes).getUint32(0, true);
	if (headerLength % 4 !== 0 || 4 + headerLength > bytes.byteLength) {
		throw new RangeError(`channels: header of ${headerLength} bytes in ${bytes.byteLength}`);
	}
	const header = JSON.parse(new TextDecoder().decode(new Uint8Array(bytes, 4, headerLength))) as {
		length: number;
		names: string[];
	};
	const expected = 4 + headerLength + 4 * header.length * header.names.length;
	if (expected !== bytes.byteLength) {
		throw new RangeError(`channels: ${bytes.byteLength} bytes where the header announces ${expected}`);
	}
	const traces: Record<string, Float32Array> = {};
	header.names.forEach((name, index) => {
		traces[name] = new Float32Array(bytes, 4 + headerLength + 4 * header.length * index, header.length);
	});
	return { length: header.length, traces, facts: header };
}
