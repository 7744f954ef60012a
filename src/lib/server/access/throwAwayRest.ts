import type { IncomingMessage, ServerResponse } from 'node:http';

/** more than any request may carry (serve.ts); whoever sends on beyond it is not worth an answer */
const MOST_BYTES = 64 * 2 ** 20;

/**
 * Once a request has been answered, reads what of its body nobody wanted and throws it away. Left unread, the
 * rest would keep the connection stuck until the server gives it up some seconds later: the sender of a piece
 * that is too large or not expected would see a broken line in place of the answer, and what it asks next over
 * the same connection would be lost with it. A body that does not end within MOST_BYTES ends its connection.
 */
export function throwAwayRest(request: IncomingMessage, response: ServerResponse): void {
	response.once('finish', () => {
		if (request.complete) return;
		let bytes = 0;
		// the app's own reader would pause the body again
		request.removeAllListeners('data');
		request.on('data', (piece: Buffer) => {
			bytes += piece.length;
			if (bytes > MOST_BYTES) request.destroy();
		});
		request.resume();
	});
}
