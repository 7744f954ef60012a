import { LedgerRefusal } from '../refusal';

/**
 * A request's body piece by piece, never more than the route allows and never held in memory whole.
 *
 * @throws LedgerRefusal too-large, when the piece that crosses the limit comes
 */
export async function* bodyPieces(request: Request, limitBytes: number): AsyncGenerator<Uint8Array> {
	if (!request.body) return;
	const reader = request.body.getReader();
	let size = 0;
	try {
		for (;;) {
			const { done, value } = await reader.read();
			if (done) return;
			size += value.byteLength;
			if (size > limitBytes)
				throw new LedgerRefusal('too-large', `One request may carry at most ${limitBytes} bytes.`);
			yield value;
		}
	} finally {
		reader.releaseLock();
	}
}

/**
 * A small JSON object.
 *
 * @throws LedgerRefusal too-large; wrong-value when it is no JSON object
 */
export async function readJsonObject(request: Request, limitBytes: number): Promise<Record<string, unknown>> {
	const pieces: Uint8Array[] = [];
	for await (const piece of bodyPieces(request, limitBytes)) pieces.push(piece);
	try {
		const parsed: unknown = JSON.parse(Buffer.concat(pieces).toString('utf8'));
		if (parsed !== null && typeof parsed === 'object' && !Array.isArray(parsed))
			return parsed as Record<string, unknown>;
	} catch {
		// said below
	}
	throw new LedgerRefusal('wrong-value', 'The request must carry one JSON object.');
}
