import { FitEncoder } from 'fit-file-parser/encoder';
import { expect, it } from 'vitest';
import { fitChecksum } from '$lib/ride/fitChecksum';

it('gives the usual check value of this checksum for the nine digits', () => {
	// the usual check value, quoted from memory; the next test asks an independent implementation
	expect(fitChecksum(new TextEncoder().encode('123456789'), 0, 9)).toBe(0xbb3d);
});

it('agrees with the checksum of an independent FIT writer, and is 0 over a file with its checksum', () => {
	const bytes = Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919 + (i >> 3)) & 255);
	const checksum = fitChecksum(bytes, 100, 4900);
	expect(checksum).toBe(FitEncoder.calculateCRC(bytes.subarray(100, 4900)));
	bytes.set([checksum & 255, checksum >> 8], 4900);
	expect(fitChecksum(bytes, 100, 4902)).toBe(0);
});
