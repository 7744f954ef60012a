import { redirectTo } from '$lib/address/redirectTo';
import { endSession, getLedger } from '$lib/server';
import { forgetSession } from '../sign-in/keepSession';
import type { RequestHandler } from './$types';

/** Ends the session of this browser, here and in the ledger. */
export const POST: RequestHandler = ({ cookies, locals }) => {
	if (locals.sessionId !== null) endSession(getLedger(), locals.sessionId);
	if (locals.guarded) forgetSession(cookies, locals);
	redirectTo(303, locals.guarded ? '/sign-in' : '/');
};
