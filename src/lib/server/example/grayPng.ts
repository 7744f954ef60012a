import { deflateSync } from 'node:zlib';

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/**
 * A picture in shades of gray as a PNG file.
 *
 * @param pixels one byte a pixel, row by row; 0 = black, 255 = white
 * @throws RangeError when there are not width x height pixels
 * Source: ISO/IEC 15948, clauses 5, 9 (filter 0) and 11.2.
 */
export function grayPng(width: number, height: number, pixels: Uint8Array): Uint8Array {
	if (pixels.length !== width * height)
		throw new RangeError(`${pixels.length} pixels, not ${width} x ${height}`);
	const header = Buffer.alloc(13);
	header.writeUInt32BE(width, 0);
	header.writeUInt32BE(height, 4);
	// 8 bits, gray; compression, filter and interlace methods 0
	header.set([8, 0, 0, 0, 0], 8);
	const rows = Buffer.alloc((width + 1) * height);
	for (let y = 0; y < height; y++) rows.set(pixels.subarray(y * width, (y + 1) * width), y * (width + 1) + 1);
	return Buffer.concat([
		SIGNATURE,
		chunk('IHDR', header),
		chunk('IDAT', deflateSync(rows)),
		chunk('IEND', Buffer.alloc(0))
	]);
}

function chunk(type: string, data: Uint8Array): Buffer {
	const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
	const whole = Buffer.alloc(body.length + 8);
	whole.writeUInt32BE(data.length, 0);
	whole.set(body, 4);
	whole.writeUInt32BE(checksum(body), body.length + 4);
	return whole;
}

/** CRC-32 of ISO/IEC 15948, annex D. */
function checksum(bytes: Uint8Array): number {
	let sum = 0xffffffff;
	for (const byte of bytes) {
		sum ^= byte;
		for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
	}
	return (sum ^ 0xffffffff) >>> 0;
}
