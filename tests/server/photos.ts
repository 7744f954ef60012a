/** what no cleaned picture may hold */
export const SECRET = 'taken at 47.0000 8.0000 by camera 123';

/** coded data with a stuffed byte and a restart */
export const JPEG_SCAN = Buffer.from([0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56]);

const segment = (marker: number, data: Buffer) => {
	const head = Buffer.from([0xff, marker, 0, 0]);
	head.writeUInt16BE(data.length + 2, 2);
	return Buffer.concat([head, data]);
};

/**
 * A JPEG photo as a phone writes it, as far as its segments go: JFIF, Exif with orientation and a secret, a colour
 * profile, other application data, a comment, tables, a frame, one scan. Its coded data are no picture.
 */
export function jpegWith({ orientation, little = false }: { orientation: number; little?: boolean }): Buffer {
	const tiff = Buffer.alloc(26);
	tiff.write(little ? 'II' : 'MM', 0);
	const short = (value: number, at: number) =>
		little ? tiff.writeUInt16LE(value, at) : tiff.writeUInt16BE(value, at);
	const long = (value: number, at: number) =>
		little ? tiff.writeUInt32LE(value, at) : tiff.writeUInt32BE(value, at);
	short(42, 2);
	long(8, 4);
	short(1, 8);
	short(0x0112, 10);
	short(3, 12);
	long(1, 14);
	short(orientation, 18);
	const secret = Buffer.from(SECRET);
	return Buffer.concat([
		Buffer.from([0xff, 0xd8]),
		segment(0xe0, Buffer.concat([Buffer.from('JFIF\0'), Buffer.from([1, 2, 0, 0, 1, 0, 1, 0, 0])])),
		segment(0xe1, Buffer.concat([Buffer.from('Exif\0\0'), tiff, secret])),
		segment(0xe1, Buffer.concat([Buffer.from('a packet of words\0'), secret])),
		segment(0xe2, Buffer.concat([Buffer.from('ICC_PROFILE\0'), Buffer.from([1, 1, 9, 9])])),
		segment(0xe2, Buffer.concat([Buffer.from('MPF\0'), secret])),
		segment(0xed, secret),
		segment(0xfe, secret),
		segment(0xdb, Buffer.alloc(65, 1)),
		segment(0xc0, Buffer.from([8, 0, 1, 0, 1, 1, 1, 0x11, 0])),
		segment(0xc4, Buffer.alloc(20, 1)),
		// a fill byte before the marker
		Buffer.from([0xff]),
		segment(0xda, Buffer.from([1, 1, 0, 0, 63, 0])),
		JPEG_SCAN,
		Buffer.from([0xff, 0xd9])
	]);
}

/** One chunk of a PNG file; its checksum is not right, nobody looks at it. */
export function chunk(type: string, data: string): Buffer {
	const size = Buffer.alloc(4);
	size.writeUInt32BE(data.length);
	return Buffer.concat([size, Buffer.from(type + data), Buffer.alloc(4)]);
}

/** A PNG file with more chunks after its header. */
export function pngWith(png: Buffer, chunks: readonly Buffer[]): Buffer {
	return Buffer.concat([png.subarray(0, 33), ...chunks, png.subarray(33)]);
}

export function riff(chunks: readonly Buffer[]): Buffer {
	const content = Buffer.concat([Buffer.from('WEBP'), ...chunks]);
	const head = Buffer.from('RIFF\0\0\0\0');
	head.writeUInt32LE(content.length, 4);
	return Buffer.concat([head, content]);
}

/** A WebP file in its extended form, as far as its chunks go. */
export function webpWith({ exif }: { exif: boolean }): Buffer {
	const one = (type: string, data: Buffer) => {
		const size = Buffer.alloc(4);
		size.writeUInt32LE(data.length);
		return Buffer.concat([Buffer.from(type), size, data, Buffer.alloc(data.length % 2)]);
	};
	const secret = Buffer.from(SECRET);
	return riff([
		one('VP8X', Buffer.from([exif ? 0x0c : 0, 0, 0, 0, 0, 0, 0, 0, 0, 0])),
		one('VP8 ', Buffer.from([1, 2, 3])),
		...(exif ? [one('EXIF', secret), one('XMP ', secret), one('ABCD', secret)] : [])
	]);
}
