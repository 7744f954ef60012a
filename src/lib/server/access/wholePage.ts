/** What the framework may be told of an answer that it makes. */
interface PageOptions {
	readonly transformPageChunk: (piece: { html: string; done: boolean }) => string;
}

/** what the framework hashes instead of the page */
const STAND_IN = 'page';

/**
 * Lets the framework answer, without its hash of a page. By that hash a browser could ask whether a page is still as it
 * was; but each page has a nonce of its own, so it never is, and going through the largest page letter by letter takes
 * an eighth of its time.
 *
 * @param resolve answers with the framework's options
 * @throws Error when a page comes in pieces: a part of it would be missing
 */
export async function wholePage(
	resolve: (options: PageOptions) => Response | Promise<Response>
): Promise<Response> {
	let page: string | null = null;
	const response = await resolve({
		transformPageChunk: ({ html }) => {
			page = html;
			return STAND_IN;
		}
	});
	// data and files, and pages that were not rendered after all: moved elsewhere, refused
	if (page === null || !response.headers.has('x-sveltekit-page')) return response;
	const headers = new Headers(response.headers);
	if (!headers.has('etag')) throw new Error('A page that comes in pieces cannot be put together here.');
	headers.delete('etag');
	// bytes at once: given letters, each of who measures, answers and sends goes through them again
	const bytes = Buffer.from(page);
	headers.set('content-length', String(bytes.byteLength));
	return new Response(bytes, { status: response.status, headers });
}
