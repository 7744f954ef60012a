import type { Cookies } from '@sveltejs/kit';
import { choosePerson, getLedger, LedgerRefusal, writeBeside } from '$lib/server';
import { rememberPerson } from './rememberPerson';

/**
 * Whoever sits at the workshop's own machine says who they are; from elsewhere nobody may be anybody.
 *
 * @throws LedgerRefusal not-allowed; see `choosePerson`
 */
export async function chooseName(cookies: Cookies, locals: App.Locals, name: string): Promise<void> {
	if (locals.guarded)
		throw new LedgerRefusal('not-allowed', 'Here people sign in; names are changed on the page People.');
	const ledger = getLedger();
	rememberPerson(cookies, await writeBeside(ledger, () => choosePerson(ledger, name)));
}
