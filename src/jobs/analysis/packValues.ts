const MISSING = 0;

/**
 * Packs values into bytes: each is rounded to a whole multiple of `step` and written as its difference
 * from the last known one, zigzag (0, -1, 1, -2 ... become 0, 1, 2, 3 ...) plus one, seven bits a byte,
 * lowest first. A missing value (NaN or infinite) is the single byte 0. Slow channels take about a byte a
 * value before deflating.
 *
 * @param values in the channel's unit; |value / step| < 2^51
 * @param step what one whole number is worth, > 0
 * @returns the bytes; `unpackValues` gives the values back to within half a step
 */
export function packValues(values: ArrayLike<number>, step: number): Uint8Array {
	let bytes = new Uint8Array(values.length * 3 + 16);
	let at = 0;
	let last = 0;
	for (let index = 0; index < values.length; index++) {
		if (at + 10 > bytes.length) bytes = grow(bytes);
		const value = values[index];
		// not finite
		if (value - value !== 0) {
			bytes[at++] = MISSING;
			continue;
		}
		const whole = Math.round(value / step);
		const difference = whole - last;
		last = whole;
		let code = (difference < 0 ? -2 * difference - 1 : 2 * difference) + 1;
		if (code < 128) {
			bytes[at++] = code;
			continue;
		}
		// plain arithmetic: positions in 1e-7 degrees do not fit the 32 bits of bitwise operators
		while (code >= 128) {
			bytes[at++] = (code % 128) + 128;
			code = Math.floor(code / 128);
		}
		bytes[at++] = code;
	}
	return bytes.slice(0, at);
}

function grow(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
	const larger = new Uint8Array(bytes.length * 2);
	larger.set(bytes);
	return larger;
}
