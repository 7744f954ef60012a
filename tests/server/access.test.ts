import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
	choosePerson,
	comesFromUs,
	findPerson,
	getSettings,
	hostAnswer,
	listPeople,
	mayUse,
	personOfToken,
	personToken,
	readJsonObject,
	ROUTE_ROLES,
	setSettings,
	bodyPieces
} from '$lib/server';
import { freshLedger } from './testLedger';

const routes = fileURLToPath(new URL('../../src/routes', import.meta.url));

/** every folder with a page or an endpoint, as the framework names it */
function routeIds(folder = '', found: string[] = []): string[] {
	const files = readdirSync(join(routes, folder), { withFileTypes: true });
	if (files.some(({ name }) => /^\+(page|server)\b/.test(name))) found.push(folder === '' ? '/' : folder);
	for (const entry of files) if (entry.isDirectory()) routeIds(`${folder}/${entry.name}`, found);
	return found;
}

describe('the roles of routes', () => {
	it('name every route of the app and no other', () => {
		expect(existsSync(routes)).toBe(true);
		expect(Object.keys(ROUTE_ROLES).sort()).toEqual(routeIds().sort());
	});

	it('let nobody without a name write but to where names are chosen or shown', () => {
		const open = (guarded: boolean) =>
			Object.keys(ROUTE_ROLES).filter((id) => mayUse(id, 'POST', null, guarded) === 'allowed');
		const doors = ['/sign-in', '/sign-out', '/set-password', '/come'];
		expect(open(false)).toEqual(['/welcome', ...doors]);
		expect(open(true)).toEqual(doors);
	});

	it('let nobody read anything from elsewhere but the doors and what a watcher asks', () => {
		const open = Object.keys(ROUTE_ROLES).filter((id) => mayUse(id, 'GET', null, true) === 'allowed');
		expect(open).toEqual(['/sign-in', '/sign-out', '/set-password', '/come', '/ready.json', '/health.json']);
		expect(mayUse('/method', 'GET', null, true)).toBe('choose a name');
		expect(mayUse('/method', 'GET', 'rider', true)).toBe('allowed');
		// the first steps choose any name: from elsewhere they are the owner's
		expect(mayUse('/welcome', 'POST', 'engineer', true)).toBe('not allowed');
	});

	it('refuse what they do not name, whatever the role', () => {
		expect(mayUse('/secret', 'GET', 'owner', false)).toBe('not allowed');
		expect(mayUse('constructor', 'GET', 'owner', false)).toBe('not allowed');
		expect(mayUse(null, 'GET', 'owner', false)).toBe('no such route');
	});

	it('let riders hand in and see their own, and leave the rest to engineers', () => {
		expect(mayUse('/uploads', 'POST', 'rider', false)).toBe('allowed');
		expect(mayUse('/own', 'GET', 'rider', false)).toBe('allowed');
		expect(mayUse('/wheels', 'GET', 'rider', false)).toBe('not allowed');
		expect(mayUse('/wheels', 'GET', 'engineer', false)).toBe('allowed');
		expect(mayUse('/wheels', 'POST', 'rider', false)).toBe('not allowed');
		expect(mayUse('/wheels', 'POST', 'engineer', false)).toBe('allowed');
		expect(mayUse('/wheels', 'GET', null, false)).toBe('choose a name');
	});

	it('take every method but GET and HEAD for a write', () => {
		for (const method of ['POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS', 'get'])
			expect(mayUse('/settings', method, 'rider', false)).toBe('not allowed');
	});
});

describe('hostAnswer', () => {
	const origin = 'http://127.0.0.1:4710';

	it('knows its own address and the other names of this machine', () => {
		expect(hostAnswer('127.0.0.1:4710', origin)).toBe('ours');
		expect(hostAnswer('localhost:4710', origin)).toBe('other loopback name');
		expect(hostAnswer('[::1]:4710', origin)).toBe('other loopback name');
		expect(hostAnswer('LOCALHOST:4710', origin)).toBe('other loopback name');
	});

	it.each([
		null,
		'',
		'evil.example:4710',
		'127.0.0.1:4711',
		'127.0.0.1',
		'localhost.evil.example:4710',
		'127.0.0.1:4710@evil',
		'127.0.0.1:4710, x',
		'[::2]:4710',
		'10.0.0.7:4710'
	])('takes %j for foreign', (host) => {
		expect(hostAnswer(host, origin)).toBe('foreign');
	});

	it('answers on the loopback address that it was told to listen on', () => {
		expect(hostAnswer('127.0.0.2:4710', 'http://127.0.0.2:4710')).toBe('ours');
		expect(hostAnswer('127.0.0.2:4711', 'http://127.0.0.2:4710')).toBe('foreign');
		expect(hostAnswer('127.0.0.3:4710', 'http://127.0.0.2:4710')).toBe('foreign');
		expect(hostAnswer('127.0.0.2:4710', origin)).toBe('foreign');
	});

	it('knows that a browser leaves port 80 out', () => {
		expect(hostAnswer('127.0.0.1', 'http://127.0.0.1')).toBe('ours');
		expect(hostAnswer('127.0.0.1:80', 'http://127.0.0.1:80')).toBe('ours');
	});

	it('knows that a browser leaves port 443 out behind https', () => {
		expect(hostAnswer('ledger.example', 'https://ledger.example')).toBe('ours');
		expect(hostAnswer('ledger.example:443', 'https://ledger.example')).toBe('ours');
		expect(hostAnswer('ledger.example:80', 'https://ledger.example')).toBe('foreign');
		expect(hostAnswer('other.example', 'https://ledger.example')).toBe('foreign');
	});

	it('minds the name only where the port is not known (development)', () => {
		expect(hostAnswer('127.0.0.1:5173', null)).toBe('ours');
		expect(hostAnswer('evil.example:5173', null)).toBe('foreign');
	});
});

describe('comesFromUs', () => {
	it('refuses pages of other ports on this machine, which share our cookies', () => {
		expect(comesFromUs('http://127.0.0.1:9999', 'http://127.0.0.1:4710')).toBe(false);
		expect(comesFromUs('null', 'http://127.0.0.1:4710')).toBe(false);
		expect(comesFromUs('http://127.0.0.1:4710', 'http://127.0.0.1:4710')).toBe(true);
		expect(comesFromUs(null, 'http://127.0.0.1:4710')).toBe(true);
	});
});

describe('people', () => {
	it('get the next free code; the first is the owner', () => {
		const { ledger } = freshLedger();
		expect(choosePerson(ledger, ' Kim  Example ')).toMatchObject({
			name: 'Kim Example',
			code: 'P2',
			role: 'engineer'
		});
		expect(listPeople(ledger)[0]).toMatchObject({ code: 'P1', role: 'owner' });
	});

	it('stay the same person when the name is chosen again, whatever its case', () => {
		const { ledger } = freshLedger();
		const { id } = choosePerson(ledger, 'Kim');
		expect(choosePerson(ledger, 'kim').id).toBe(id);
		expect(listPeople(ledger)).toHaveLength(2);
	});

	it('need a name that can be shown', () => {
		const { ledger } = freshLedger();
		for (const wrong of ['', '  ', '\u202e', 'x'.repeat(81)])
			expect(() => choosePerson(ledger, wrong)).toThrow(expect.objectContaining({ code: 'wrong-value' }));
	});
});

describe('personToken', () => {
	it('stands for a person of its own ledger only', () => {
		const { ledger } = freshLedger();
		const other = freshLedger().ledger;
		const person = listPeople(ledger)[0];
		const token = personToken(ledger, person);
		expect(personOfToken(ledger, token)).toEqual(findPerson(ledger, person.id));
		expect(personOfToken(other, token)).toBeNull();
		for (const wrong of [undefined, '', '1', '-1', `${token}9`, token.replace(/-.*/, '-x')])
			expect(personOfToken(ledger, wrong)).toBeNull();
	});
});

describe('settings', () => {
	it('keep what is set and leave the rest', () => {
		const { ledger, actor } = freshLedger();
		setSettings(ledger, actor, { timeZone: 'Asia/Tokyo' });
		setSettings(ledger, actor, { workshopName: 'Hubs and more' });
		expect(getSettings(ledger)).toEqual({
			workshopName: 'Hubs and more',
			timeZone: 'Asia/Tokyo',
			uploadLimitMegabytes: 256,
			backupReminderDays: 7
		});
	});

	it('refuse a zone that does not exist', () => {
		const { ledger, actor } = freshLedger();
		expect(() => setSettings(ledger, actor, { timeZone: 'Mars/Olympus' })).toThrow('no time zone');
		expect(() => setSettings(ledger, actor, { workshopName: '' })).toThrow('missing');
		for (const uploadLimitMegabytes of [0, 1.5, NaN, 2001])
			expect(() => setSettings(ledger, actor, { uploadLimitMegabytes })).toThrow('1 to 2000 MB');
		for (const backupReminderDays of [0, 1.5, NaN, 366])
			expect(() => setSettings(ledger, actor, { backupReminderDays })).toThrow('1 to 365 days');
	});
});

describe('request bodies', () => {
	const request = (body: string | Uint8Array<ArrayBuffer>) =>
		new Request('http://127.0.0.1/', { method: 'POST', body });

	it('are read up to the limit of their route', async () => {
		const read = async (limit: number) => {
			let size = 0;
			for await (const piece of bodyPieces(request(new Uint8Array(1000)), limit)) size += piece.length;
			return size;
		};
		expect(await read(1000)).toBe(1000);
		await expect(read(999)).rejects.toMatchObject({ code: 'too-large' });
	});

	it.each(['', 'x', '[]', '1', 'null', '"a"'])('that should be a JSON object are not %j', async (body) => {
		await expect(readJsonObject(request(body), 100)).rejects.toMatchObject({ code: 'wrong-value' });
	});
});
