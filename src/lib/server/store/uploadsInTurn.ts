import { PREFIX } from '$lib/address/prefix';
import type { RequestListener } from 'node:http';
import { inTurn } from '../inTurn';
import { log } from '../log/log';

/**
 * Lets files that are handed in stand back: their requests are taken up one at a time, and between two of them pages are
 * answered. Once taken up, bytes come as fast as the line brings them.
 */
export function uploadsInTurn(app: RequestListener): RequestListener {
	return (request, response) => {
		if (!request.url?.startsWith(`${PREFIX}/uploads`)) return app(request, response);
		inTurn(() => app(request, response)).catch((error) => {
			log.failure('upload not taken up', error);
			response.destroy();
		});
	};
}
