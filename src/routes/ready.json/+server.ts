import { getLedger, readiness, type Readiness } from '$lib/server';
import type { RequestHandler } from './$types';

/** 200 when this server can do its work, else 503; for whatever watches it. */
export const GET: RequestHandler = () => {
	let answer: Readiness | { ready: false };
	try {
		answer = readiness(getLedger());
	} catch {
		answer = { ready: false };
	}
	return new Response(`${JSON.stringify(answer)}\n`, {
		status: answer.ready ? 200 : 503,
		headers: { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store' }
	});
};
