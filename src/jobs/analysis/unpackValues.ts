/**
 * Reads what `packValues` wrote.
 *
 * @param bytes packed values
 * @param step the step they were packed with
 * @param into receives the values; missing ones as NaN
 * @param from index in `into` of the first value
 * @param count how many values there must be
 * @throws RangeError when the bytes do not hold exactly `count` values
 */
export function unpackValues(
	bytes: Uint8Array,
	step: number,
	into: Float32Array | Float64Array,
	from: number,
	count: number
): void {
	let at = 0;
	let last = 0;
	for (let index = from; index < from + count; index++) {
		let code = 0;
		let weight = 1;
		for (;;) {
			if (at >= bytes.length) throw new RangeError('packed values end too early');
			const byte = bytes[at++];
			code += (byte & 127) * weight;
			if (byte < 128) break;
			weight *= 128;
		}
		if (code === 0) {
			into[index] = NaN;
			continue;
		}
		const zigzag = code - 1;
		last += zigzag % 2 === 1 ? -(zigzag + 1) / 2 : zigzag / 2;
		into[index] = last * step;
	}
	if (at !== bytes.length) throw new RangeError('packed values go on after their end');
}
