import type { RideChannels } from './rideChannels';

/**
 * Traces as a page reads them: a 32-bit little-endian header length, a JSON header padded with blanks to a
 * multiple of four bytes, then for each name `length` 32-bit little-endian floats (NaN = not known).
 *
 * @param extra further facts for the header
 */
export function channelBytes(
	ride: RideChannels,
	extra: Readonly<Record<string, unknown>> = {}
): Uint8Array<ArrayBuffer> {
	const names = ride.channels.map(({ name }) => name);
	const json = new TextEncoder().encode(JSON.stringify({ ...extra, length: ride.length, names }));
	const headerBytes = Math.ceil(json.length / 4) * 4;
	const bytes = new Uint8Array(4 + headerBytes + names.length * ride.length * 4);
	const view = new DataView(bytes.buffer);
	view.setUint32(0, headerBytes, true);
	bytes.fill(32, 4, 4 + headerBytes).set(json, 4);
	let at = 4 + headerBytes;
	for (const { values } of ride.channels) {
		for (let index = 0; index < ride.length; index++, at += 4)
			view.setFloat32(at, values[index] ?? NaN, true);
	}
	return bytes;
}
