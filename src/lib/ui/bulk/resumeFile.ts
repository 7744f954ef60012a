import { PREFIX } from '$lib/address/prefix';
import { sha256 } from './sha256';

/** smaller ones are sent anew sooner than they are compared, unless the line is slow */
const LEAST_BYTES = 8_000_000;
/** larger ones would hold up the page where it has to compute their hash itself */
const MOST_COMPUTED_HERE = 8 * 2 ** 20;

/** SHA-256 in hex, or null where a file is too large for a browser that does not compute it, or cannot be read. */
export async function hashOf(bytes: Blob): Promise<string | null> {
	try {
		if (!globalThis.crypto?.subtle)
			return bytes.size > MOST_COMPUTED_HERE ? null : sha256(new Uint8Array(await bytes.arrayBuffer()));
		const digest = await crypto.subtle.digest('SHA-256', await bytes.arrayBuffer());
		return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
	} catch {
		// a file that cannot be read any more fails when it is sent, with a word
		return null;
	}
}

/**
 * The upload of this very file that a closed page left half done, or undefined. Its pieces are compared one by one:
 * name and size do not prove that it is the same file. What turns out to be another one is taken back.
 *
 * @param leastBytes smaller ones are not asked for
 */
export async function resumeFile(
	file: File,
	fetch: typeof globalThis.fetch,
	signal: AbortSignal,
	leastBytes = LEAST_BYTES
): Promise<string | undefined> {
	if (file.size < leastBytes) return undefined;
	const held = await askFor(file, fetch, signal);
	if (!held) return undefined;
	for (const [i, sha256] of held.pieces.entries()) {
		const from = i * held.pieceBytes;
		if ((await hashOf(file.slice(from, from + held.pieceBytes))) === sha256) continue;
		await fetch(`${PREFIX}/uploads/${encodeURIComponent(held.id)}`, { method: 'DELETE', signal }).catch(
			() => undefined
		);
		return undefined;
	}
	return held.id;
}

async function askFor(
	{ name, size }: File,
	fetch: typeof globalThis.fetch,
	signal: AbortSignal
): Promise<{ id: string; pieceBytes: number; pieces: string[] } | null> {
	try {
		const response = await fetch(`${PREFIX}/uploads/resume`, {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify({ name, size }),
			signal
		});
		const answer = (await response.json()) as { id?: string; pieceBytes: number; pieces: string[] };
		return response.ok && answer.id ? { ...answer, id: answer.id } : null;
	} catch {
		return null;
	}
}
