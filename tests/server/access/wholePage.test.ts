import { describe, expect, it } from 'vitest';
import { wholePage } from '$lib/server';

type Options = Parameters<Parameters<typeof wholePage>[0]>[0];

/** Answers as the framework does: the page as it was changed, with a hash of it. */
const framework =
	(html: string, init: ResponseInit = {}) =>
	async ({ transformPageChunk }: Options) => {
		const body = transformPageChunk({ html, done: true });
		const headers = new Headers(init.headers);
		headers.set('content-length', String(body.length));
		headers.set('etag', `"${body.length}"`);
		headers.set('x-sveltekit-page', 'true');
		return new Response(body, { ...init, headers });
	};

describe('wholePage', () => {
	it('gives the page as it was rendered, with its length in bytes and without a hash of what stood in for it', async () => {
		const html = '<p>−3 °C, “Müller”</p>';
		const answer = await wholePage(framework(html));
		expect(answer.headers.get('etag')).toBeNull();
		expect(answer.headers.get('content-length')).toBe(String(Buffer.byteLength(html)));
		expect(await answer.text()).toBe(html);
	});

	it('keeps the status, what else the answer says and each cookie', async () => {
		const headers = new Headers({ 'content-security-policy': "default-src 'none'" });
		headers.append('set-cookie', 'a=1');
		headers.append('set-cookie', 'b=2');
		const answer = await wholePage(framework('<p>no</p>', { status: 404, headers }));
		expect([answer.status, answer.headers.get('content-security-policy')]).toEqual([
			404,
			"default-src 'none'"
		]);
		expect(answer.headers.getSetCookie()).toEqual(['a=1', 'b=2']);
	});

	it('leaves alone what is no page', async () => {
		const file = new Response('a,b', { headers: { etag: '"of the file"' } });
		expect(await wholePage(async () => file)).toBe(file);
	});

	it('refuses a page that comes in pieces', async () => {
		const inPieces = async ({ transformPageChunk }: Options) =>
			new Response(transformPageChunk({ html: '<p>first</p>', done: true }), {
				headers: { 'x-sveltekit-page': 'true' }
			});
		await expect(wholePage(inPieces)).rejects.toThrow('comes in pieces');
	});
});
