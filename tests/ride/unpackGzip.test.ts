import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { decodeRide } from '$lib/ride/decodeRide';
import { READ_LIMITS, type ReadLimits } from '$lib/ride/limits';
import { isGzip, unpackGzip } from '$lib/ride/unpackGzip';

const FIT = readFileSync(fileURLToPath(new URL('../../sample-rides/2026-04-22-w1-r1.fit', import.meta.url)));

describe('decodeRide', () => {
	it('reads a packed ride as the ride itself', async () => {
		expect(isGzip(FIT)).toBe(false);
		const packed = gzipSync(FIT);
		expect(isGzip(packed)).toBe(true);
		expect(await decodeRide(packed, 'ride.fit.gz')).toEqual(await decodeRide(FIT, 'ride.fit'));
	});

	it('refuses what is packed twice, and what is packed and no ride', async () => {
		await expect(decodeRide(gzipSync(gzipSync(FIT)), 'a.gz')).rejects.toMatchObject({
			code: 'not-a-ride-file'
		});
		await expect(decodeRide(gzipSync('hello, this is no ride'), 'b.gz')).rejects.toMatchObject({
			code: 'not-a-ride-file'
		});
	});
});

describe('unpackGzip', () => {
	it('stops where more comes out than may', async () => {
		const bomb = gzipSync(new Uint8Array(20 * 2 ** 20));
		expect(bomb.length).toBeLessThan(40_000);
		await expect(unpackGzip(bomb, 2 ** 20)).rejects.toMatchObject({ code: 'too-large' });
		expect((await unpackGzip(bomb)).length).toBe(20 * 2 ** 20);
	});

	it('refuses a file that is cut off, or whose checksum does not agree', async () => {
		const packed = gzipSync(FIT);
		await expect(unpackGzip(packed.subarray(0, packed.length >> 1))).rejects.toMatchObject({
			code: 'damaged'
		});
		const wrong = Uint8Array.from(packed);
		wrong[wrong.length - 6] ^= 0xff;
		await expect(unpackGzip(wrong)).rejects.toMatchObject({ code: 'damaged' });
	});
});

describe('the limits that may be set', () => {
	const rows = Array.from({ length: 30 }, (_, i) => `${i / 10},80,240\n`).join('');
	const CSV = new TextEncoder().encode(`time_s,crank_rpm,wheel_rpm\n${rows}`);

	it('bound records, samples and what comes out of gzip, and let through what lies at the bound', async () => {
		const records = (await decodeRide(FIT, 'a.fit')).channels.speedMps!.timeS.length;
		const read = (bytes: Uint8Array, limits: Partial<ReadLimits>) =>
			decodeRide(bytes, 'a', { ...READ_LIMITS, ...limits }).then(
				() => 'taken',
				(error: { code: string }) => error.code
			);
		expect(await read(FIT, { records: records + 5 })).toBe('taken');
		expect(await read(FIT, { records: records - 5 })).toBe('too-large');
		expect(await read(CSV, { samples: 30 })).toBe('taken');
		expect(await read(CSV, { samples: 29 })).toBe('too-large');
		expect(await read(gzipSync(CSV), { unpackedBytes: CSV.length })).toBe('taken');
		expect(await read(gzipSync(CSV), { unpackedBytes: CSV.length - 1 })).toBe('too-large');
	});
});
