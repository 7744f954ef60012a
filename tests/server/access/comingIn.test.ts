import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import {
	anonymisePerson,
	changePassword,
	choosePerson,
	comeInByLink,
	createPerson,
	endAccess,
	endSession,
	makeLink,
	ownerHasPassword,
	removePassword,
	sessionsOf,
	setAccessSettings,
	setPassword,
	setPasswordByLink,
	signIn,
	updatePerson,
	withdrawLink
} from '$lib/server';
import { hashPassword } from '$lib/server/access/passwordHash';
import { actorOfSession } from '$lib/server/access/sessions';
import { storedHash } from '$lib/server/access/setPassword';
import { freshLedger, rowsOf, type TestLedger } from '../testLedger';

// the true cost takes a second a hash beside other work; passwords.test.ts holds it
vi.mock('$lib/server/access/passwordCost', () => ({ PASSWORD_COST: { N: 64, r: 8, p: 1 } }));

const PASSWORD = 'seven green bicycles';
const FROM = { address: '192.168.1.20', device: 'computer' as const };
const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;

const tryIn = ({ ledger, actor }: TestLedger, password: string, change: object = {}) =>
	signIn(ledger, { name: actor.name, password, ...FROM, ...change });
const rider = ({ ledger, actor }: TestLedger) =>
	createPerson(ledger, actor, { name: 'Ro Nowhere', role: 'rider' });

describe('signIn', () => {
	it('opens a session by name or code; its token is nowhere in the files of the ledger', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		await setPassword(ledger, actor, actor.personId, PASSWORD);
		const { token } = await tryIn(test, PASSWORD);
		expect(actorOfSession(ledger, token)).toMatchObject({ actor, byLink: false });
		expect(actorOfSession(ledger, (await tryIn(test, PASSWORD, { name: ' p1 ' })).token)?.actor).toEqual(
			actor
		);
		const bytes = readdirSync(ledger.folder)
			.filter((name) => name.startsWith('ledger.sqlite'))
			.map((name) => readFileSync(join(ledger.folder, name), 'latin1'))
			.join();
		expect(bytes).toContain('scrypt$');
		expect(bytes).not.toContain(token);
		expect(bytes).not.toContain(PASSWORD);
		expect(bytes).not.toContain(FROM.address);
	});

	it('says the same of a wrong password, an unknown name and a person without a password', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		await setPassword(ledger, actor, actor.personId, PASSWORD);
		rider(test);
		const said = [];
		for (const attempt of [{ password: 'wrong' }, { name: 'Nobody' }, { name: 'Ro Nowhere' }])
			said.push(await tryIn(test, PASSWORD, attempt).catch(({ code, sentence }) => `${code} ${sentence}`));
		expect(new Set(said)).toEqual(new Set(['not-allowed Name and password do not belong together.']));
	});

	it('lets an account rest after ten failures from anywhere, and forgets them after a quarter of an hour', async () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		await setPassword(ledger, actor, actor.personId, PASSWORD);
		await setLimits(test, { attemptsPerAccount: 3 });
		for (let i = 0; i < 3; i++)
			await expect(
				tryIn(test, 'wrong', { address: `10.0.0.${i}`, name: i ? 'P1' : actor.name })
			).rejects.toMatchObject({
				code: 'not-allowed'
			});
		await expect(tryIn(test, PASSWORD)).rejects.toMatchObject({ code: 'too-many' });
		clock.ms += 15 * MINUTE_MS + 1;
		expect((await tryIn(test, PASSWORD)).token).toHaveLength(43);
		// what succeeded does not count
		for (let i = 0; i < 4; i++) await tryIn(test, PASSWORD);
	});

	it('lets an address rest that tries one password on many names, a whole IPv6 network alike', async () => {
		const test = freshLedger();
		await setLimits(test, { attemptsPerAddress: 3 });
		const from = (address: string, name: string) =>
			tryIn(test, PASSWORD, { address, name }).catch(({ code }) => code);
		for (const i of [1, 2, 3]) expect(await from(`2001:db8:1:2::${i}`, `name ${i}`)).toBe('not-allowed');
		expect(await from('2001:db8:1:2::9', 'name 4')).toBe('too-many');
		expect(await from('2001:db8:1:3::1', 'name 4')).toBe('not-allowed');
	});

	it('counts attempts made at once before their outcome is known', async () => {
		const test = freshLedger();
		await setLimits(test, { attemptsPerAccount: 3 });
		const all = await Promise.all(
			Array.from({ length: 8 }, () => tryIn(test, 'wrong').catch(({ code }) => code))
		);
		expect(all.filter((code) => code === 'not-allowed')).toHaveLength(3);
	});

	it('makes the hash of an older cost anew, and the password stays', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const old = await hashPassword(PASSWORD, { N: 32, r: 8, p: 1 });
		await setPassword(ledger, actor, actor.personId, PASSWORD);
		ledger.database.prepare('UPDATE person_password SET hash = ?').run(old);
		await tryIn(test, PASSWORD);
		expect(storedHash(ledger, actor.personId)).toMatch(/^scrypt\$64\$8\$1\$/);
		await tryIn(test, PASSWORD);
	});
});

describe('a session', () => {
	it('ends when it is ended, runs out, or its person is anonymised; the role is that of the moment', async () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		const second = choosePerson(ledger, 'Second Engineer');
		await setPassword(ledger, actor, second.id, PASSWORD);
		const open = async () => (await signIn(ledger, { name: second.name, password: PASSWORD, ...FROM })).token;
		const [one, two] = [await open(), await open()];
		expect(actorOfSession(ledger, one)?.actor.role).toBe('engineer');
		updatePerson(ledger, actor, second.id, { name: second.name, role: 'owner' }, 1);
		expect(actorOfSession(ledger, one)?.actor.role).toBe('owner');
		endSession(ledger, actorOfSession(ledger, one)!.sessionId);
		expect(actorOfSession(ledger, one)).toBeNull();
		expect(sessionsOf(ledger, second.id)).toHaveLength(1);
		clock.ms += 30 * DAY_MS;
		expect(actorOfSession(ledger, two)).toBeNull();
		const three = await open();
		anonymisePerson(ledger, actor, second.id);
		expect(actorOfSession(ledger, three)).toBeNull();
		expect(rowsOf(ledger, 'SELECT * FROM person_password')).toEqual([]);
	});

	it('lets pages be read also where nothing can be written, and is touched as soon as it can be', async () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		await setPassword(ledger, actor, actor.personId, PASSWORD);
		const { token } = await tryIn(test, PASSWORD);
		const seen = () => rowsOf(ledger, 'SELECT seen_ms FROM session')[0].seen_ms;
		const before = seen();
		clock.ms += 10 * MINUTE_MS;
		ledger.database.pragma('query_only = ON');
		expect(actorOfSession(ledger, token)?.actor).toEqual(actor);
		ledger.database.pragma('query_only = OFF');
		expect(seen()).toBe(before);
		expect(actorOfSession(ledger, token)?.actor).toEqual(actor);
		expect(seen()).toBe(clock.ms);
	});

	it.each([undefined, '', 'x', 'x'.repeat(1000)])('is not opened by the cookie %j', (cookie) => {
		expect(actorOfSession(freshLedger().ledger, cookie)).toBeNull();
	});
});

describe('passwords', () => {
	it('are changed by whoever knows the old one; other browsers are out then', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		await setPassword(ledger, actor, actor.personId, PASSWORD);
		const [here, there] = [(await tryIn(test, PASSWORD)).token, (await tryIn(test, PASSWORD)).token];
		const { sessionId } = actorOfSession(ledger, here)!;
		const change = (before: string, after: string) =>
			changePassword(ledger, actor, { before, after, address: FROM.address, sessionId });
		await expect(change('wrong', 'eight blue bicycles')).rejects.toMatchObject({ code: 'not-allowed' });
		await expect(change(PASSWORD, 'short')).rejects.toMatchObject({ code: 'wrong-value' });
		await change(PASSWORD, 'eight blue bicycles');
		expect(actorOfSession(ledger, here)).not.toBeNull();
		expect(actorOfSession(ledger, there)).toBeNull();
		await expect(tryIn(test, PASSWORD)).rejects.toMatchObject({ code: 'not-allowed' });
	});

	it('are set by a link once, within the hour', async () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		const by = (token: string, password = PASSWORD) =>
			setPasswordByLink(ledger, { token, password, address: FROM.address });
		const { token } = makeLink(ledger, actor, actor.personId, 'password');
		await expect(by(token, 'short')).rejects.toMatchObject({ code: 'wrong-value' });
		expect((await by(token)).id).toBe(actor.personId);
		await expect(by(token)).rejects.toMatchObject({ code: 'not-allowed' });
		const late = makeLink(ledger, actor, actor.personId, 'password');
		clock.ms += 60 * MINUTE_MS;
		await expect(by(late.token)).rejects.toMatchObject({ code: 'not-allowed' });
		const [first, second] = [0, 1].map(() => makeLink(ledger, actor, actor.personId, 'password').token);
		await expect(by(first)).rejects.toMatchObject({ code: 'not-allowed' });
		const twice = await Promise.allSettled([by(second), by(second, 'nine red bicycles')]);
		expect(twice.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
		// a link to hand in rides sets no password
		const rides = makeLink(ledger, actor, actor.personId, 'rides').token;
		await expect(by(rides)).rejects.toMatchObject({ code: 'not-allowed' });
	});

	it('stay with one owner at least, so that somebody can let the others in', async () => {
		const { ledger, actor } = freshLedger();
		const second = choosePerson(ledger, 'Second Engineer');
		expect(ownerHasPassword(ledger)).toBe(false);
		await setPassword(ledger, actor, second.id, PASSWORD);
		expect(ownerHasPassword(ledger)).toBe(false);
		await setPassword(ledger, actor, actor.personId, PASSWORD);
		expect(ownerHasPassword(ledger)).toBe(true);
		expect(() => removePassword(ledger, actor, actor.personId)).toThrow('One owner with a password');
		expect(ownerHasPassword(ledger)).toBe(true);
		removePassword(ledger, actor, second.id);
		expect(storedHash(ledger, second.id)).toBeNull();
	});
});

describe("a rider's own link", () => {
	const phone = { address: '203.0.113.9', device: 'phone' as const };

	it('lets in as often as it stands, and nobody after it was withdrawn', () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		const personId = rider(test);
		const { token } = makeLink(ledger, actor, personId, 'rides');
		const first = comeInByLink(ledger, { token, ...phone }).token;
		clock.ms += 200 * DAY_MS;
		const second = comeInByLink(ledger, { token, ...phone }).token;
		expect(actorOfSession(ledger, first)).toBeNull();
		expect(actorOfSession(ledger, second)).toMatchObject({
			byLink: true,
			actor: { personId, role: 'rider' }
		});
		withdrawLink(ledger, actor, personId, 'rides');
		expect(actorOfSession(ledger, second)).toBeNull();
		expect(() => comeInByLink(ledger, { token, ...phone })).toThrow('does not stand any more');
	});

	it('stays open on a phone that is used, and opens no more than a rider may, whoever it was made for', () => {
		const { ledger, actor, clock } = freshLedger();
		const { token } = makeLink(ledger, actor, actor.personId, 'rides');
		const opened = comeInByLink(ledger, { token, ...phone }).token;
		for (let month = 0; month < 24; month++) {
			clock.ms += 30 * DAY_MS;
			expect(actorOfSession(ledger, opened)?.actor.role).toBe('rider');
		}
	});

	it('is replaced by a newer one, and guessing is limited by address', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const personId = rider(test);
		const old = makeLink(ledger, actor, personId, 'rides').token;
		makeLink(ledger, actor, personId, 'rides');
		await setLimits(test, { attemptsPerAccount: 3 });
		const codes = Array.from({ length: 4 }, () => {
			try {
				comeInByLink(ledger, { token: old, ...phone });
			} catch (refused) {
				return (refused as { code: string }).code;
			}
		});
		expect(codes).toEqual(['not-allowed', 'not-allowed', 'not-allowed', 'too-many']);
	});

	it('is made and withdrawn by an owner alone; the trail says so without the token', () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const personId = rider(test);
		const engineer = { ...actor, role: 'engineer' as const };
		for (const step of [
			() => makeLink(ledger, engineer, personId, 'rides'),
			() => withdrawLink(ledger, engineer, personId, 'rides'),
			() => removePassword(ledger, engineer, personId),
			() => endAccess(ledger, engineer, personId)
		])
			expect(step).toThrow(expect.objectContaining({ code: 'not-allowed' }));
		const { token } = makeLink(ledger, actor, personId, 'rides');
		endAccess(ledger, actor, personId);
		expect(() => comeInByLink(ledger, { token, ...phone })).toThrow('does not stand any more');
		const trail = rowsOf(ledger, 'SELECT action, detail FROM trail');
		expect(trail.map((row) => row.action)).toContain('made a link to hand in rides for');
		expect(JSON.stringify(trail)).not.toContain(token);
	});
});

async function setLimits({ ledger, actor }: TestLedger, change: object) {
	const usual = { attemptsPerAccount: 10, attemptsPerAddress: 30, attemptMinutes: 15, sessionDays: 30 };
	setAccessSettings(ledger, actor, { ...usual, ...change });
}
