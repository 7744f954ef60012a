import type { IncomingMessage, ServerResponse } from 'node:http';
import { expect, it, vi } from 'vitest';
import { uploadsInTurn } from '$lib/server/store/uploadsInTurn';

it('takes uploads up one at a time and pages at once', async () => {
	const taken: string[] = [];
	const app = uploadsInTurn((request) => taken.push(request.url!));
	const ask = (url: string) => app({ url } as IncomingMessage, {} as ServerResponse);
	for (const url of ['/uploads', '/uploads/1', '/rides', '/uploads/1/finish', '/']) ask(url);
	expect(taken).toEqual(['/rides', '/']);
	await new Promise((resolve) => setImmediate(resolve));
	expect(taken).toEqual(['/rides', '/', '/uploads']);
	ask('/wheels');
	await vi.waitFor(() => expect(taken).toHaveLength(6), { timeout: 30_000 });
	expect(taken).toEqual(['/rides', '/', '/uploads', '/wheels', '/uploads/1', '/uploads/1/finish']);
});

it('breaks the connection where an upload cannot be taken up', async () => {
	const destroy = vi.fn();
	const app = uploadsInTurn(() => {
		throw new Error('no');
	});
	app({ url: '/uploads' } as IncomingMessage, { destroy } as unknown as ServerResponse);
	await vi.waitFor(() => expect(destroy).toHaveBeenCalledOnce(), { timeout: 30_000 });
});
