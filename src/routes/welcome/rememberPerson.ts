import { COOKIE_PATH } from '$lib/address/prefix';
import type { Cookies } from '@sveltejs/kit';
import { getLedger, PERSON_COOKIE, personToken, type PersonView } from '$lib/server';

/** Keeps who sits at this browser; the hooks read it and make the actor of every write from it. */
export function rememberPerson(cookies: Cookies, person: PersonView): void {
	cookies.set(PERSON_COOKIE, personToken(getLedger(), person), {
		path: COOKIE_PATH,
		httpOnly: true,
		sameSite: 'strict',
		// the server speaks plain http on loopback; a "secure" cookie would be dropped there
		secure: false,
		maxAge: 400 * 86_400
	});
}
