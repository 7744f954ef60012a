import {
	closeLedger,
	comesFromUs,
	getLedger,
	hostAnswer,
	log,
	mayUse,
	PERSON_COOKIE,
	personOfToken,
	actorOf,
	startWebRunner,
	stopFigures,
	stopWebRunner
} from '$lib/server';
import { building, dev } from '$app/environment';
import { redirect, type Handle, type HandleServerError, type ServerInit } from '@sveltejs/kit';
import { randomUUID } from 'node:crypto';

export const init: ServerInit = () => {
	if (building) return;
	try {
		startWebRunner();
	} catch (error) {
		log.failure('queue not started', error);
	}
	process.once('sveltekit:shutdown', () => {
		void stopWebRunner();
		stopFigures();
		closeLedger();
	});
};

export const handle: Handle = async ({ event, resolve }) => {
	const { request, route, url, cookies, locals } = event;
	// null on the development server, which chooses its own port
	const origin = dev ? null : (process.env.ORIGIN ?? null);
	const host = hostAnswer(request.headers.get('host'), origin);
	if (host === 'foreign')
		return refuse(
			421,
			'This address is not one of this Slip Ledger; open the address it printed at its start.'
		);
	const reads = request.method === 'GET' || request.method === 'HEAD';
	if (host === 'other loopback name' && reads && origin)
		return new Response(null, { status: 307, headers: { location: origin + url.pathname + url.search } });
	if (!reads && !comesFromUs(request.headers.get('origin'), origin ?? url.origin))
		return refuse(403, 'This request came from a page that is not of this Slip Ledger.');

	// who shows no token is nobody, also while the ledger cannot be read
	const token = building ? undefined : cookies.get(PERSON_COOKIE);
	const person = token ? personOfToken(getLedger(), token) : null;
	locals.actor = person && actorOf(person);
	const answer = mayUse(route.id, request.method, person?.role ?? null);
	if (answer === 'not allowed') return refuse(403, 'Your role does not allow this.');
	if (answer === 'choose a name') {
		const isPage = reads && (event.isDataRequest || wantsPage(request));
		if (isPage) redirect(303, '/welcome');
		return refuse(401, 'Choose your name first: open /welcome.');
	}

	const response = await resolve(event);
	response.headers.set('x-content-type-options', 'nosniff');
	response.headers.set('referrer-policy', 'same-origin');
	response.headers.set('cross-origin-opener-policy', 'same-origin');
	response.headers.set('cross-origin-resource-policy', 'same-origin');
	return response;
};

/** The log has everything; the page gets a sentence and a reference to find it there. */
export const handleError: HandleServerError = ({ error, event, status, message }) => {
	if (status === 404) return { message: 'There is no such page.' };
	if (status < 500) return { message };
	const reference = randomUUID().slice(0, 8);
	log.failure('request failed', error, {
		reference,
		status,
		route: event.route.id,
		method: event.request.method
	});
	return { message: 'Slip Ledger could not do this; the server log says why.', reference };
};

function wantsPage(request: Request): boolean {
	return (request.headers.get('accept') ?? '').includes('text/html');
}

function refuse(status: number, sentence: string): Response {
	return new Response(JSON.stringify({ sentence }), {
		status,
		headers: {
			'content-type': 'application/json; charset=utf-8',
			'cache-control': 'no-store',
			'x-content-type-options': 'nosniff'
		}
	});
}
