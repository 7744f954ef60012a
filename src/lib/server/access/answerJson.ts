import { LedgerRefusal, type LedgerRefusalCode } from '../refusal';

const STATUS: Partial<Record<LedgerRefusalCode, number>> = {
	'not-found': 404,
	'too-large': 413,
	'disk-full': 507,
	'wrong-offset': 409,
	conflict: 409,
	overlap: 409,
	incomplete: 409,
	'not-allowed': 403,
	'too-many': 429
};

/**
 * Answers an endpoint in JSON: what the action returns, or the sentence of a refusal with its status.
 * Anything else that is thrown goes on to the framework's error handling.
 */
export async function answerJson(action: () => unknown, status = 200): Promise<Response> {
	try {
		return json((await action()) ?? {}, status);
	} catch (error) {
		if (!(error instanceof LedgerRefusal)) throw error;
		return json({ code: error.code, sentence: error.sentence }, STATUS[error.code] ?? 400);
	}
}

function json(body: unknown, status: number): Response {
	return new Response(JSON.stringify(body), {
		status,
		headers: { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store' }
	});
}
