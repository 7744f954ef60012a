import { describe, expect, it } from 'vitest';
import { grayPng } from '$lib/server/example/grayPng';
import { cleanPicture } from '$lib/server/hardware/cleanPicture';
import { chunk, jpegWith, JPEG_SCAN, pngWith, riff, SECRET, webpWith } from './photos';

const cleaned = (bytes: Uint8Array, type: 'image/jpeg' | 'image/png' | 'image/webp') => {
	const result = cleanPicture(bytes, type);
	return result && Buffer.from(result);
};

describe('cleanPicture', () => {
	it('takes place, serial and comments out of a JPEG photo and leaves its coded data as they are', () => {
		const photo = jpegWith({ orientation: 1 });
		expect(photo.toString('latin1')).toContain(SECRET);
		const clean = cleaned(photo, 'image/jpeg')!;
		expect(clean.toString('latin1')).not.toContain(SECRET);
		expect(clean.includes(JPEG_SCAN)).toBe(true);
		// what is left is the picture alone: JFIF, colour profile, tables, frame, scan
		expect(clean.includes(Buffer.from('JFIF\0'))).toBe(true);
		expect(clean.includes(Buffer.from('ICC_PROFILE\0'))).toBe(true);
		expect(clean.includes(Buffer.from('Exif'))).toBe(false);
		expect(clean.subarray(-2)).toEqual(Buffer.from([0xff, 0xd9]));
		// cleaning again changes nothing, so one photo has one hash
		expect(cleaned(clean, 'image/jpeg')).toEqual(clean);
	});

	it('keeps which side of a JPEG photo is up, in either order of bytes', () => {
		for (const little of [false, true]) {
			const clean = cleaned(jpegWith({ orientation: 6, little }), 'image/jpeg')!;
			expect(clean.toString('latin1')).not.toContain(SECRET);
			const exif = clean.indexOf('Exif\0\0');
			expect(clean.subarray(exif + 6, exif + 8).toString()).toBe('MM');
			// one entry: 0x0112, a short, one of them, 6
			expect(clean.subarray(exif + 14, exif + 26).toString('hex')).toBe('000101120003000000010006');
			expect(cleaned(clean, 'image/jpeg')).toEqual(clean);
		}
	});

	it('cuts off what lies behind the end: a second picture, a film', () => {
		const behind = Buffer.concat([jpegWith({ orientation: 1 }), jpegWith({ orientation: 1 })]);
		expect(cleaned(behind, 'image/jpeg')).toEqual(cleaned(jpegWith({ orientation: 1 }), 'image/jpeg'));
		const png = Buffer.from(grayPng(2, 2, new Uint8Array(4)));
		expect(cleaned(Buffer.concat([png, Buffer.from(SECRET)]), 'image/png')).toEqual(png);
	});

	it('takes texts, times and Exif data out of PNG and WebP pictures', () => {
		const png = Buffer.from(grayPng(2, 2, new Uint8Array(4)));
		const full = pngWith(png, [chunk('tEXt', SECRET), chunk('eXIf', SECRET), chunk('tIME', SECRET)]);
		expect(full.toString('latin1')).toContain(SECRET);
		expect(cleaned(full, 'image/png')).toEqual(png);

		const webp = webpWith({ exif: true });
		expect(webp.toString('latin1')).toContain(SECRET);
		const clean = cleaned(webp, 'image/webp')!;
		expect(clean).toEqual(webpWith({ exif: false }));
		expect(cleaned(clean, 'image/webp')).toEqual(clean);
	});

	it('refuses every picture that is cut off, and never throws at changed bytes', () => {
		const whole = {
			'image/jpeg': jpegWith({ orientation: 6 }),
			'image/png': Buffer.from(grayPng(2, 2, new Uint8Array(4))),
			'image/webp': webpWith({ exif: true })
		} as const;
		for (const [name, bytes] of Object.entries(whole)) {
			const type = name as keyof typeof whole;
			for (let length = 12; length < bytes.length; length++)
				expect([type, length, cleaned(bytes.subarray(0, length), type)]).toEqual([type, length, null]);
			for (let at = 12; at < bytes.length; at++)
				for (const value of [0, 0x7f, 0xd9, 0xff]) {
					const changed = Buffer.from(bytes);
					changed[at] = value;
					const result = cleaned(changed, type);
					expect(result === null || result.length <= bytes.length).toBe(true);
				}
		}
		expect(cleaned(riff([]), 'image/webp')).toBeNull();
	});

	it('leaves what is no picture alone', () => {
		const sheet = Buffer.from('end float 0.02 mm\n');
		expect(cleanPicture(sheet, 'text/plain')).toBe(sheet);
	});
});
