import { redirect } from '@sveltejs/kit';
import { endSession, getLedger } from '$lib/server';
import { forgetSession } from '../sign-in/keepSession';
import type { RequestHandler } from './$types';

/** Ends the session of this browser, here and in the ledger. */
export const POST: RequestHandler = ({ cookies, locals }) => {
	if (locals.sessionId !== null) endSession(getLedger(), locals.sessionId);
	if (locals.guarded) forgetSession(cookies, locals);
	redirect(303, locals.guarded ? '/sign-in' : '/');
};
