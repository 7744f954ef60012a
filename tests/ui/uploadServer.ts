import { createHash } from 'node:crypto';

export const shaOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

/** A server of the upload protocol in memory that knows files by their hash. */
export function uploadServer() {
	const uploads = new Map<string, { name: string; size: number; bytes: Buffer }>();
	const stored = new Map<string, string>();
	const requests: string[] = [];
	const faults: ((request: string) => boolean)[] = [];
	let gate: { at: string; open: Promise<void> } | null = null;
	const json = (body: unknown, status = 200) => new Response(JSON.stringify(body), { status });
	const answer = async (input: RequestInfo | URL, init: RequestInit = {}): Promise<Response> => {
		const request = `${init.method ?? 'GET'} ${String(input)}`;
		requests.push(request);
		if (gate && request.startsWith('PATCH') && gate.at === 'PATCH') await gate.open;
		if (init.signal?.aborted) throw new DOMException('stopped', 'AbortError');
		if (faults.some((fault) => fault(request))) throw new TypeError('network');
		const id = /\/uploads\/(u\d+)/.exec(request)?.[1] ?? '';
		const upload = uploads.get(id);
		const body = typeof init.body === 'string' ? (JSON.parse(init.body) as Record<string, unknown>) : {};
		if (request === 'POST /uploads/known')
			return json({ known: (body.hashes as string[]).filter((hash) => stored.has(hash)) });
		if (request === 'POST /uploads/resume') {
			const [held] = [...uploads].filter(([, { name, size }]) => name === body.name && size === body.size);
			if (!held) return json({});
			const whole = held[1].bytes.subarray(0, Math.floor(held[1].bytes.length / 1e6) * 1e6);
			held[1].bytes = whole;
			const pieces = Array.from({ length: whole.length / 1e6 }, (_, i) =>
				shaOf(whole.subarray(i * 1e6, (i + 1) * 1e6))
			);
			return json({ id: held[0], pieceBytes: 1e6, pieces });
		}
		if (request === 'POST /uploads') {
			const fresh = `u${requests.length}`;
			uploads.set(fresh, { name: String(body.name), size: Number(body.size), bytes: Buffer.alloc(0) });
			// the server has it, its answer is on the way
			if (gate?.at === 'answer') await Promise.race([gate.open, stopped(init.signal)]);
			return json({ id: fresh, offset: 0 }, 201);
		}
		if (!upload) return json({ sentence: 'There is no such upload.' }, 404);
		if (init.method === 'DELETE') return json({ done: uploads.delete(id) });
		if (init.method === 'PATCH') {
			if (Number(new Headers(init.headers).get('upload-offset')) !== upload.bytes.length)
				return json({}, 409);
			upload.bytes = Buffer.concat([upload.bytes, Buffer.from(await (init.body as Blob).arrayBuffer())]);
			return json({ offset: upload.bytes.length });
		}
		if (!init.method) return json({ offset: upload.bytes.length });
		stored.set(shaOf(upload.bytes), upload.name);
		uploads.delete(id);
		return json({ importId: 1 });
	};
	return {
		fetch: answer as typeof fetch,
		requests,
		faults,
		stored,
		uploads,
		hold(at: 'PATCH' | 'answer' = 'PATCH') {
			let open = () => {};
			gate = { at, open: new Promise((resolve) => (open = resolve)) };
			return () => {
				gate = null;
				open();
			};
		}
	};
}

const stopped = (signal: AbortSignal | null | undefined) =>
	new Promise<never>((_, reject) =>
		signal?.addEventListener('abort', () => reject(new DOMException('stopped', 'AbortError')))
	);
