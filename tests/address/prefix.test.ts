import { describe, expect, it } from 'vitest';
import { COOKIE_PATH, pathWithin, PREFIX } from '../../src/lib/address/prefix';
import { redirectTo } from '../../src/lib/address/redirectTo';
import { sessionCookie } from '../../src/lib/server/access/whoAsks';

describe('PREFIX', () => {
	it('is nothing where no build wrote one in, and cookies belong to every path', () => {
		expect(PREFIX).toBe('');
		expect(COOKIE_PATH).toBe('/');
	});
});

describe('pathWithin', () => {
	it.each([
		['/slips', '/'],
		['/slips/', '/'],
		['/slips/rides/3', '/rides/3'],
		['/slips/slips/3', '/slips/3'],
		['/', null],
		['/rides', null],
		['/slipstream', null],
		['/Slips/rides', null],
		['//slips/rides', null],
		['', null]
	])('takes the prefix off "%s": %s', (pathname, path) => {
		expect(pathWithin(pathname, '/slips')).toBe(path);
	});

	it('leaves every path as it is where there is no prefix', () => {
		expect(pathWithin('/slips/rides', '')).toBe('/slips/rides');
	});
});

describe('redirectTo', () => {
	it('throws what sends the browser on', () => {
		expect(() => redirectTo(303, '/rides/3')).toThrow(
			expect.objectContaining({ status: 303, location: '/rides/3' })
		);
	});
});

describe('sessionCookie', () => {
	it('binds to the whole host where it may: a cookie of a folder must not have such a name (RFC 6265bis 4.1.3.2)', () => {
		expect(sessionCookie(true, '')).toBe('__Host-session');
		expect(sessionCookie(true, '/slips')).toBe('__Secure-session');
		expect(sessionCookie(false, '/slips')).toBe('session');
	});
});
