import { createHash, randomBytes } from 'node:crypto';

/** A random word of 256 bits that opens something, as it stands in a cookie or a link. */
export function newToken(): string {
	return randomBytes(32).toString('base64url');
}

/**
 * What the ledger keeps of a token. A plain hash is enough: nobody guesses 256 random bits, and whoever reads
 * the ledger cannot go back from it.
 */
export function tokenHash(token: string): string {
	return createHash('sha256').update(token).digest('hex');
}
