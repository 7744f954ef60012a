import { createHash, randomBytes } from 'node:crypto';
import { describe, expect, it, vi } from 'vitest';
import { hashOf } from '$lib/ui/bulk/resumeFile';
import { sha256 } from '$lib/ui/bulk/sha256';

const reference = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

describe('sha256', () => {
	it('gives the digests of the standard', () => {
		const of = (text: string) => sha256(new TextEncoder().encode(text));
		// FIPS 180-4, examples published with it
		expect(of('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
		expect(of('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq')).toBe(
			'248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'
		);
	});

	it('agrees with another implementation at every length around a block, and on parts of a buffer', () => {
		const bytes = randomBytes(100_000);
		for (let length = 0; length < 200; length++)
			expect(sha256(bytes.subarray(7, 7 + length))).toBe(reference(bytes.subarray(7, 7 + length)));
		expect(sha256(bytes)).toBe(reference(bytes));
	});

	it('stands in where the browser computes none, but for what is large', async () => {
		const bytes = randomBytes(5000);
		const known = reference(bytes);
		expect(await hashOf(new Blob([bytes]))).toBe(known);
		vi.stubGlobal('crypto', {});
		try {
			expect(await hashOf(new Blob([bytes]))).toBe(known);
			expect(await hashOf(new Blob([new Uint8Array(9 * 2 ** 20)]))).toBeNull();
		} finally {
			vi.unstubAllGlobals();
		}
	});
});
