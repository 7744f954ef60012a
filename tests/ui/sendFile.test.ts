import { describe, expect, it } from 'vitest';
import { PIECE_BYTES, sendFile, SendRefused } from '$lib/ui/sendFile';

/** A server of the upload protocol in memory, with faults to order. */
function uploadServer(
	faults: ((request: {
		method: string;
		path: string;
		bytes: number;
	}) => 'lost' | 'half' | number | null)[] = []
) {
	const received: Uint8Array[] = [];
	const requests: string[] = [];
	const held = () => received.reduce((sum, piece) => sum + piece.length, 0);
	const json = (body: unknown, status = 200) => new Response(JSON.stringify(body), { status });
	const answer = async (input: RequestInfo | URL, init: RequestInit = {}): Promise<Response> => {
		const method = init.method ?? 'GET';
		const path = String(input);
		const body = init.body instanceof Blob ? new Uint8Array(await init.body.arrayBuffer()) : new Uint8Array();
		requests.push(`${method} ${path}`);
		const fault = faults.length ? faults[0]({ method, path, bytes: body.length }) : null;
		if (fault !== null) faults.shift();
		if (fault === 'lost') throw new TypeError('network');
		if (fault === 'half') {
			received.push(body.subarray(0, body.length >> 1));
			throw new TypeError('network');
		}
		if (typeof fault === 'number') return json({ sentence: 'The server says no.' }, fault);
		if (method === 'POST' && path === '/uploads') return json({ id: 'u1' }, 201);
		if (method === 'GET') return json({ offset: held() });
		if (method === 'POST') return json({ importId: 7 });
		const offset = Number(new Headers(init.headers).get('upload-offset'));
		if (offset !== held()) return json({ sentence: 'Another offset is held.' }, 409);
		received.push(body);
		return json({ offset: held() });
	};
	return { fetch: answer as typeof fetch, requests, bytes: () => Buffer.concat(received) };
}

const content = Uint8Array.from({ length: 2 * PIECE_BYTES + 345 }, (_, i) => (i * 31) % 251);
const file = () => new File([content], 'ride.fit');
const wait = async () => {};

describe('sendFile', () => {
	it('sends the file in pieces of 1 MB and gives the id of the import', async () => {
		const server = uploadServer();
		const progress: number[] = [];
		const id = await sendFile(file(), {
			fetch: server.fetch,
			wait,
			onProgress: ({ sentBytes }) => progress.push(sentBytes)
		});
		expect(id).toBe(7);
		expect(server.bytes().equals(Buffer.from(content))).toBe(true);
		expect(progress).toEqual([0, PIECE_BYTES, 2 * PIECE_BYTES, content.length]);
		expect(server.requests.at(-1)).toBe('POST /uploads/u1/finish');
	});

	it('begins with small pieces where asked to, which grow on a quick line and shrink on a slow one', async () => {
		const sizes: number[] = [];
		let nowMs = 0;
		let takesMs = 100;
		const fetch = (async (input: RequestInfo | URL, init: RequestInit = {}) => {
			if (init.method !== 'PATCH') return Response.json({ id: 'a', offset: 0, importId: 1 });
			const { size } = init.body as Blob;
			sizes.push(size);
			nowMs += takesMs;
			if (sizes.length === 3) takesMs = 20_000;
			return Response.json({ offset: Number(new Headers(init.headers).get('upload-offset')) + size });
		}) as typeof globalThis.fetch;
		const file = new File([new Uint8Array(4_000_000)], 'ride.fit');
		await sendFile(file, { fetch, nowMs: () => nowMs, firstPieceBytes: 250_000 });
		expect(sizes.slice(0, 9)).toEqual([
			250_000, 500_000, 1_000_000, 1_000_000, 500_000, 250_000, 125_000, 65_536, 65_536
		]);
		expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(4_000_000);
	});

	it('goes on where the server stopped after half a piece arrived', async () => {
		const server = uploadServer([({ method, bytes }) => (method === 'PATCH' && bytes > 0 ? 'half' : null)]);
		await sendFile(file(), { fetch: server.fetch, wait });
		expect(server.bytes().equals(Buffer.from(content))).toBe(true);
		expect(server.requests).toContain('GET /uploads/u1');
	});

	it('asks again when the answer to the end of the upload was lost', async () => {
		const server = uploadServer([({ path }) => (path.endsWith('/finish') ? 'lost' : null)]);
		expect(await sendFile(file(), { fetch: server.fetch, wait })).toBe(7);
	});

	it('does not repeat what the server refuses, and hands its sentence on', async () => {
		const server = uploadServer([({ path }) => (path === '/uploads' ? 413 : null)]);
		const refused = await sendFile(file(), { fetch: server.fetch, wait }).catch((error: unknown) => error);
		expect(refused).toBeInstanceOf(SendRefused);
		expect((refused as SendRefused).sentence).toBe('The server says no.');
		expect(server.requests).toEqual(['POST /uploads']);
	});

	it('gives up on a server that takes nothing, and sends what the rider said with the name', async () => {
		const bodies: string[] = [];
		const stubborn = (async (input: RequestInfo | URL, init: RequestInit = {}) => {
			if (typeof init.body === 'string') bodies.push(init.body);
			const status = init.method === 'PATCH' ? 409 : 200;
			return new Response(JSON.stringify({ id: 'u1', offset: 0 }), { status });
		}) as typeof fetch;
		const sending = sendFile(file(), { fetch: stubborn, wait, hints: { wheelId: 3 } });
		await expect(sending).rejects.toThrow('no progress past byte 0');
		expect(JSON.parse(bodies[0])).toEqual({ name: 'ride.fit', size: content.length, wheelId: 3 });
	});

	it('goes on with an upload that was begun before, and begins anew when the server gave it up', async () => {
		const server = uploadServer([]);
		let uploadId = '';
		const lost = [null, null, ...Array.from({ length: 20 }, () => 'lost' as const)];
		const breaking = (async (input: RequestInfo | URL, init: RequestInit = {}) => {
			if (lost.shift() === 'lost') throw new TypeError('network');
			return server.fetch(input, init);
		}) as typeof fetch;
		const onAnnounced = (id: string) => (uploadId = id);
		await expect(sendFile(file(), { fetch: breaking, wait, onAnnounced })).rejects.toThrow('network');
		expect(uploadId).toBe('u1');
		await sendFile(file(), { fetch: server.fetch, wait, uploadId });
		expect(server.requests.filter((request) => request === 'POST /uploads')).toHaveLength(1);
		expect(server.bytes().equals(content)).toBe(true);

		const forgetful = uploadServer([({ method }) => (method === 'GET' ? 404 : null)]);
		await sendFile(file(), { fetch: forgetful.fetch, wait, uploadId: 'gone' });
		expect(forgetful.requests.slice(0, 2)).toEqual(['GET /uploads/gone', 'POST /uploads']);
		expect(forgetful.bytes().equals(content)).toBe(true);
	});

	it('gives up after six attempts at a connection that stays broken', async () => {
		const server = uploadServer(Array.from({ length: 9 }, () => () => 'lost' as const));
		await expect(sendFile(file(), { fetch: server.fetch, wait })).rejects.toThrow('network');
		expect(server.requests.length).toBe(6);
	});
});
