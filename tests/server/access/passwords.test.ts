import { describe, expect, it } from 'vitest';
import { PASSWORD_COST } from '$lib/server/access/passwordCost';
import { checkPassword, hashPassword } from '$lib/server/access/passwordHash';
import { refuseWeakPassword } from '$lib/server/access/passwordRule';

const cheap = { N: 16, r: 1, p: 1 };

describe('hashPassword', () => {
	it('costs what the OWASP sheet asks for: N = 2^15, r = 8, p = 3', async () => {
		expect(PASSWORD_COST).toEqual({ N: 32768, r: 8, p: 3 });
		expect(await hashPassword('seven green bicycles')).toMatch(/^scrypt\$32768\$8\$3\$[\w-]{22}\$[\w-]{43}$/);
	}, 30_000);

	it('knows the test vector of RFC 7914 (section 12): N = 16384, r = 8, p = 1, salt "SodiumChloride"', async () => {
		const hash = Buffer.from(
			'7023bdcb3afd7348461c06cd81fd38ebfda8fbba904f8e3ea9b543f6545da1f2d5432955613f0fcf62d49705242a9af9e61e85dc0d651e40dfcf017b45575887',
			'hex'
		).toString('base64url');
		const stored = `scrypt$16384$8$1$${Buffer.from('SodiumChloride').toString('base64url')}$${hash}`;
		expect(await checkPassword('pleaseletmein', stored)).toEqual({ right: true, stale: true });
	});

	it('salts: the same password is never the same text, and both are known again', async () => {
		const [one, two] = [await hashPassword('a b c d e', cheap), await hashPassword('a b c d e', cheap)];
		expect(one).not.toBe(two);
		for (const stored of [one, two])
			expect(await checkPassword('a b c d e', stored)).toEqual({ right: true, stale: true });
		expect((await checkPassword('a b c d f', one)).right).toBe(false);
		expect((await checkPassword('', one)).right).toBe(false);
	});

	it('knows a password again however its letters are written', async () => {
		const stored = await hashPassword('Stra\u00dfe und Fl\u00fcgel', cheap);
		expect((await checkPassword('Stra\u00dfe und Flu\u0308gel', stored)).right).toBe(true);
	});

	it('says that a hash of another cost is to be made anew', async () => {
		expect((await checkPassword('word', await hashPassword('word', cheap))).stale).toBe(true);
		expect((await checkPassword('word', await hashPassword('word'))).stale).toBe(false);
	}, 30_000);

	it.each([null, '', 'plain', 'scrypt$1$2$3', 'scrypt$a$8$1$c2FsdHNhbHQ$aGFzaGhhc2g', 'bcrypt$1$1$1$x$x'])(
		'lets nobody in by the stored text %j',
		async (stored) => {
			expect(await checkPassword('word', stored)).toEqual({ right: false, stale: false });
		},
		30_000
	);

	it('takes no more than twenty at once: each needs 32 MB, one after the other', async () => {
		const all = await Promise.allSettled(
			Array.from({ length: 25 }, () => hashPassword('seven green bicycles', cheap))
		);
		const refused = all.filter(({ status }) => status === 'rejected');
		expect(refused).toHaveLength(5);
		expect((refused[0] as PromiseRejectedResult).reason).toMatchObject({ code: 'too-many' });
		expect(await hashPassword('again', cheap)).toContain('scrypt');
	});
});

describe('refuseWeakPassword', () => {
	it.each([
		'',
		'elevensigns',
		'aaaaaaaaaaaaaaa',
		'ababababababab',
		'Kim Nowhere Example',
		'slipledger123',
		'x'.repeat(201)
	])('refuses %j', (password) => {
		expect(() => refuseWeakPassword(password, 'Kim Nowhere Example')).toThrow(
			expect.objectContaining({ code: 'wrong-value' })
		);
	});

	it('asks for no kinds of characters', () => {
		for (const good of ['seven green bicycles', 'twelve signs', 'zw\u00f6lf Zeichen'])
			expect(() => refuseWeakPassword(good, 'Kim')).not.toThrow();
	});
});
