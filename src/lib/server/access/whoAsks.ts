import { PREFIX } from '$lib/address/prefix';
import type { Actor } from '../actor';
import type { Ledger } from '../ledger/openLedger';
import { actorOf } from '../people/people';
import { PERSON_COOKIE, personOfToken } from './personToken';
import { actorOfSession } from './sessions';

export interface Asking {
	readonly actor: Actor | null;
	/** the session that it came in by; null where nobody signs in */
	readonly sessionId: number | null;
	/** by a rider's own link */
	readonly byLink: boolean;
}

export const NOBODY: Asking = { actor: null, sessionId: null, byLink: false };

/**
 * Who sends a request: on this machine whoever was chosen in the browser, else whoever signed in there.
 *
 * @param ledger opened only when there is something to look up
 */
export function whoAsks(
	ledger: () => Ledger,
	guarded: boolean,
	secure: boolean,
	cookie: (name: string) => string | undefined
): Asking {
	const token = cookie(guarded ? sessionCookie(secure) : PERSON_COOKIE);
	if (!token) return NOBODY;
	if (guarded) return actorOfSession(ledger(), token) ?? NOBODY;
	const person = personOfToken(ledger(), token);
	return person ? { ...NOBODY, actor: actorOf(person) } : NOBODY;
}

/**
 * Behind https the name binds the cookie to this host, path / and https: no neighbour can set it. Under a prefix the
 * cookie belongs to that folder, which such a name does not allow: there it binds to https alone.
 */
export function sessionCookie(secure: boolean, prefix: string = PREFIX): string {
	if (!secure) return 'session';
	return prefix === '' ? '__Host-session' : '__Secure-session';
}

/**
 * Whether people have to sign in, as the start command decided. Unless it says clearly that they need not, they
 * have to.
 */
export function isGuarded(env: Readonly<Record<string, string | undefined>>, development: boolean): boolean {
	return !development && env.SLIP_LEDGER_SIGN_IN !== 'not needed';
}
