import { pathWithin, PREFIX } from '$lib/address/prefix';
import { redirectTo } from '$lib/address/redirectTo';
import {
	brokeOff,
	closeLedger,
	comesFromUs,
	getLedger,
	hostAnswer,
	isGuarded,
	isLoopbackAddress,
	log,
	mayTouch,
	mayUse,
	NOBODY,
	startWebRunner,
	stopFigures,
	stopWebRunner,
	WATCHED_ROUTES,
	wholePage,
	whoAsks,
	type Role
} from '$lib/server';
import { building, dev } from '$app/environment';
import { error, type Handle, type HandleServerError, type ServerInit } from '@sveltejs/kit';
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
	if (building) return resolve(event);
	// null on the development server, which chooses its own port
	const origin = dev ? null : (process.env.ORIGIN ?? null);
	const guarded = isGuarded(process.env, dev);
	locals.guarded = guarded;
	locals.secure = origin?.startsWith('https:') ?? false;
	locals.client = event.getClientAddress();
	const inWords = wantsPage(request);
	if (!guarded && !isLoopbackAddress(locals.client))
		return refuse(421, 'This Slip Ledger is open on its own machine only.', inWords);
	const host = hostAnswer(request.headers.get('host'), origin);
	if (host === 'foreign')
		return refuse(
			421,
			'This address is not one of this Slip Ledger; open the address it printed at its start.',
			inWords
		);
	const reads = request.method === 'GET' || request.method === 'HEAD';
	if (host === 'other loopback name' && reads && origin)
		return new Response(null, { status: 307, headers: { location: origin + url.pathname + url.search } });
	if (!reads && !comesFromUs(request.headers.get('origin'), origin ?? url.origin))
		return refuse(
			403,
			'This was sent from a page that is not of this Slip Ledger, and nothing was done. Open the ledger by the address it printed at its start and send it from there.',
			inWords
		);

	// who shows no token is nobody, also while the ledger cannot be read
	const asking =
		reads && WATCHED_ROUTES.has(route.id ?? '')
			? NOBODY
			: whoAsks(getLedger, guarded, locals.secure, (name) => cookies.get(name));
	Object.assign(locals, asking);
	const answer = mayUse(route.id, request.method, asking.actor?.role ?? null, guarded);
	const isPage = reads && (event.isDataRequest || wantsPage(request));
	if (isPage && route.id === '/' && asking.actor?.role === 'rider') redirectTo(303, '/own');
	if (answer === 'allowed' && !mayTouch(getLedger, asking.actor, route.id, event.params)) {
		// whether there is such a ride is nobody's business either
		if (isPage) error(404, 'There is no such page.');
		return refuse(404, 'There is nothing of yours under this address.');
	}
	if (answer === 'not allowed') {
		if (isPage) error(403, refusedPage(asking.actor?.role));
		return refuse(403, 'Your role does not allow this.');
	}
	if (answer === 'choose a name') {
		const wanted = pathWithin(url.pathname) ?? '/';
		if (isPage) redirectTo(303, guarded ? `/sign-in?to=${encodeURIComponent(wanted)}` : '/welcome');
		return refuse(401, guarded ? 'Sign in first.' : `Choose your name first: open ${PREFIX}/welcome.`);
	}

	const response = await wholePage((options) => resolve(event, options));
	response.headers.set('x-content-type-options', 'nosniff');
	response.headers.set('referrer-policy', 'same-origin');
	// browsers heed it on this machine and over https alone, and complain elsewhere
	if (!guarded || locals.secure) response.headers.set('cross-origin-opener-policy', 'same-origin');
	response.headers.set('cross-origin-resource-policy', 'same-origin');
	// what one person saw must not come back to the next at the same machine
	if (guarded && !response.headers.has('cache-control'))
		response.headers.set('cache-control', 'private, no-store');
	return response;
};
/** The log has everything; the page gets a sentence and a reference to find it there. */
export const handleError: HandleServerError = ({ error, event, status, message }) => {
	if (status === 404) return { message: 'There is no such page.' };
	if (status < 500) return { message };
	if (brokeOff(error, event.request.signal.aborted)) {
		log.info('request broke off', { route: event.route.id, method: event.request.method });
		// nobody is there to read it
		return { message: 'The connection broke off before all of it had come.' };
	}
	const reference = randomUUID().slice(0, 8);
	log.failure('request failed', error, {
		reference,
		status,
		route: event.route.id,
		method: event.request.method
	});
	return { message: 'Slip Ledger could not do this; the server log says why.', reference };
};

/** Whose page it is, and by that where to go: the page for errors has one way on, to the first page of whoever asks. */
function refusedPage(role: Role | undefined): string {
	return role === 'engineer'
		? 'Only an owner of this ledger may open this page.'
		: 'This page is for the workshop; your own rides are one press away.';
}

function wantsPage(request: Request): boolean {
	return (request.headers.get('accept') ?? '').includes('text/html');
}

/** @param inWords a browser shows the answer to a person: the bare sentence, without the braces that programs read */
function refuse(status: number, sentence: string, inWords = false): Response {
	return new Response(inWords ? `${sentence}\n` : JSON.stringify({ sentence }), {
		status,
		headers: {
			'content-type': inWords ? 'text/plain; charset=utf-8' : 'application/json; charset=utf-8',
			'cache-control': 'no-store',
			'x-content-type-options': 'nosniff'
		}
	});
}
