import { COOKIE_PATH } from '$lib/address/prefix';
import type { Cookies } from '@sveltejs/kit';
import { sessionCookie, type Opened } from '$lib/server';

/**
 * Keeps in the browser what lets it in. No script can read it. "lax": a link in a message may lead to a page,
 * but nothing that another site sends off carries it; behind https it never travels in the clear.
 */
export function keepSession(cookies: Cookies, locals: App.Locals, opened: Opened): void {
	cookies.set(sessionCookie(locals.secure), opened.token, {
		path: COOKIE_PATH,
		httpOnly: true,
		sameSite: 'lax',
		secure: locals.secure,
		maxAge: opened.maxAgeS
	});
}

export function forgetSession(cookies: Cookies, locals: App.Locals): void {
	cookies.delete(sessionCookie(locals.secure), {
		path: COOKIE_PATH,
		httpOnly: true,
		sameSite: 'lax',
		secure: locals.secure
	});
}
