import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
	createPerson,
	findPerson,
	listPeople,
	mayUse,
	openSession,
	ROUTE_ROLES,
	type Actor,
	type Role
} from '$lib/server';
import {
	cookieOf,
	openGuarded,
	OWNER,
	send,
	startsNot,
	type Answer,
	type GuardedServer
} from './guardedServer';
import { handIn } from './handIn';
import { asTable, EVERYBODY, type Who } from './roleTable';

const sample = (name: string) => fileURLToPath(new URL(`../../sample-rides/${name}`, import.meta.url));
const HOST = 'ledger.test';

/** What riders may reach, and nobody: written here by hand, so that a slip in the table of routes is seen. */
const RIDERS_READ = [
	// photos of slips that they felt themselves
	'/attachments/[id]',
	'/come',
	// the built server answers as if there were no such page
	'/design',
	'/health.json',
	'/help',
	'/method',
	'/own',
	'/own/[id]',
	'/password',
	'/ready.json',
	'/recording',
	'/rides/[id]/channels',
	'/rides/[id]/events.csv',
	'/set-password',
	'/sign-in',
	'/sign-out',
	'/uploads',
	'/uploads/[id]',
	'/uploads/[id]/finish',
	'/uploads/known',
	'/uploads/resume',
	'/words'
];
const RIDERS_WRITE = [
	'/come',
	'/own',
	'/own/[id]',
	'/password',
	'/set-password',
	'/sign-in',
	'/sign-out',
	'/uploads',
	'/uploads/[id]',
	'/uploads/[id]/finish',
	'/uploads/known',
	'/uploads/resume'
];
const NOBODY_READS = ['/come', '/health.json', '/ready.json', '/set-password', '/sign-in', '/sign-out'];
const NOBODY_WRITES = ['/come', '/set-password', '/sign-in', '/sign-out'];
const OWNERS_ALONE = ['/access', '/people/[id]/erasure', '/welcome'];

/** what programs and people are told whose role does not allow it */
const REFUSALS =
	/Your role does not allow|Only an owner of this ledger may open|This page is for the workshop/;

describe('a server that others reach', () => {
	let server: GuardedServer;
	const cookies: Partial<Record<Who, string>> = {};
	let rider: Actor;
	let rides: { own: number; other: number };
	let uploads: { own: string; other: string };

	const headersOf = (who: Who) => ({
		host: `${HOST}:${server.port}`,
		...(cookies[who] ? { cookie: cookies[who] } : {})
	});
	const get = (who: Who, path: string) =>
		send(server, path, { headers: { ...headersOf(who), accept: 'text/html' } });
	const write = (who: Who, path: string, method = 'POST', body = '', headers: Record<string, string> = {}) =>
		send(server, path, {
			method,
			body,
			headers: {
				...headersOf(who),
				origin: server.origin,
				'content-type': 'application/x-www-form-urlencoded',
				accept: 'text/html',
				...headers
			}
		});

	beforeAll(async () => {
		server = await openGuarded(['--address', `http://${HOST}:PORT`]);
		const ledger = server.ledger();
		const owner: Actor = { personId: 1, name: OWNER.name, role: 'owner' };
		const make = (name: string, role: Role): Actor => ({
			personId: createPerson(ledger, owner, { name, role }),
			name,
			role
		});
		rider = make('Ro Nowhere', 'rider');
		const [other, engineer] = [make('Si Nowhere', 'rider'), make('En Nowhere', 'engineer')];
		const cookie = ({ personId }: Actor) =>
			`session=${openSession(ledger, { personId, linkId: null, device: 'computer' }).token}`;
		cookies.owner = cookie(owner);
		cookies.engineer = cookie(engineer);
		cookies.rider = cookie(rider);
		const own = await handIn(server, cookies.rider, sample('2026-04-22-w1-r1.fit'), {
			riderId: other.personId
		});
		const others = await handIn(server, cookie(other), sample('2026-05-02-w1-r1.fit'));
		rides = { own: own.rideId, other: others.rideId };
		uploads = { own: own.uploadId, other: others.uploadId };
	});
	afterAll(() => server?.stop());

	it('does not start before an owner has a password, nor without a name when it listens everywhere', () => {
		const refused = startsNot('--address', 'http://ledger.test:4710');
		expect(refused.status).toBe(1);
		expect(refused.said).toMatch(/no owner has a password yet.*npm run access -- set-password/);
		expect(refused.said).not.toMatch(/is open at|\n\s+at /);
		const nameless = startsNot('--host', '0.0.0.0');
		expect(nameless.status).toBe(1);
		expect(nameless.said).toContain('--address http://');
		const folder = startsNot('--address', 'https://example.org/ledger');
		expect(folder.said).toContain('a name of its own');
	});

	/** what the server did with a request, as far as access goes */
	function answered({ status, headers, body }: Answer): 'in' | 'sign in' | 'no' {
		if (status === 401 || String(headers.location ?? '').startsWith('/sign-in')) return 'sign in';
		return status === 403 && REFUSALS.test(body) ? 'no' : 'in';
	}
	const pathOf = (route: string) =>
		route
			.replace(/^\/(own|rides)\/\[id\]/, `/$1/${rides.own}`)
			.replace('/uploads/[id]', `/uploads/${uploads.own}`)
			.replace('[step]', '1')
			.replace('[name]', 'torque')
			.replace(/\[\w+\]/g, '1');

	it('gives every route to whom it names and to nobody else', async () => {
		const table: Record<string, Record<Who, string>> = {};
		const wrong: string[] = [];
		for (const route of Object.keys(ROUTE_ROLES).sort()) {
			const row = {} as Record<Who, string>;
			for (const who of EVERYBODY) {
				const role = who === 'nobody' ? null : who;
				const path = pathOf(route);
				const reads = answered(await get(who, path));
				// leaving would end the session that the next rows need; it is tried below
				const leaves = route === '/sign-out';
				const writes = leaves ? 'in' : answered(await write(who, `${path}?/none`));
				row[who] = reads === 'in' && writes === 'in' ? 'reads, writes' : reads === 'in' ? 'reads' : '-';
				for (const [method, did] of [
					['GET', reads],
					['POST', writes]
				] as const) {
					const wanted = {
						allowed: 'in',
						'choose a name': 'sign in',
						'not allowed': 'no',
						'no such route': 'no'
					};
					// a page that a rider is sent on from is none that the rider reads
					const sentOn = route === '/' && who === 'rider' && method === 'GET';
					const expected = sentOn ? 'in' : wanted[mayUse(route, method, role, true)];
					if (did !== expected) wrong.push(`${method} ${route} as ${who}: ${did} instead of ${expected}`);
				}
			}
			table[route] = row;
		}
		console.log(asTable(table));
		expect(wrong).toEqual([]);
		const who = (person: Who, how: RegExp) =>
			Object.keys(table).filter((route) => how.test(table[route][person]));
		expect(who('nobody', /reads/)).toEqual(NOBODY_READS);
		expect(who('nobody', /writes/)).toEqual(NOBODY_WRITES);
		expect(who('rider', /reads/).filter((route) => route !== '/')).toEqual(RIDERS_READ);
		expect(who('rider', /writes/)).toEqual(RIDERS_WRITE);
		const notEngineers = Object.keys(table).filter((route) => !table[route].engineer.includes('reads'));
		expect(notEngineers).toEqual(OWNERS_ALONE);
	});

	it('denies what is in no table, and says nothing of what there is', async () => {
		for (const who of EVERYBODY) {
			expect((await get(who, '/nothing')).status).toBe(404);
			expect((await get(who, '/.env')).status).toBe(404);
		}
		const page = await get('nobody', '/nothing');
		expect(page.body).not.toMatch(/Our workshop|Nowhere|node_modules|\.js:\d/);
	});

	it('shows riders their own rides and uploads alone, by every address', async () => {
		const status = async (path: string) => (await get('rider', path)).status;
		for (const path of ['/own/ID', '/rides/ID/events.csv', '/rides/ID/channels?names=speedMps']) {
			expect(await status(path.replace('ID', String(rides.own))), path).toBeLessThan(400);
			expect(await status(path.replace('ID', String(rides.other))), path).toBe(404);
			expect(await status(path.replace('ID', '999')), path).toBe(404);
		}
		expect(await status(`/uploads/${uploads.own}`)).toBe(200);
		expect(await status(`/uploads/${uploads.other}`)).toBe(404);
		const piece = { 'upload-offset': '0', 'content-type': 'application/octet-stream' };
		expect((await write('rider', `/uploads/${uploads.other}`, 'PATCH', 'x', piece)).status).toBe(404);
		expect((await write('rider', `/uploads/${uploads.other}/finish`)).status).toBe(404);
		const marked = await write('rider', `/own/${rides.other}?/felt`, 'POST', 'clock=09:00');
		expect(marked.status).toBe(404);
		const list = (await get('rider', '/own')).body;
		expect(list).toContain(`/own/${rides.own}`);
		expect(list).not.toContain(`/own/${rides.other}`);
		// what a rider hands in is the rider's, whoever the request named
		const named = server
			.ledger()
			.database.prepare('SELECT rider_id AS riderId FROM ride WHERE id = ?')
			.get(rides.own);
		expect(named).toEqual({ riderId: rider.personId });
	});

	it('keeps roles and access for the owner, whatever an engineer sends', async () => {
		const change = `person=${rider.personId}&version=1&name=Ro+Nowhere&role=owner&weightKg=`;
		const refused = await write('engineer', '/people?/change', 'POST', change);
		expect(refused.body).toContain('Only an owner gives and takes roles');
		expect(findPerson(server.ledger(), rider.personId)?.role).toBe('rider');
		for (const action of ['link', 'withdraw', 'endAll', 'limits'])
			expect((await write('engineer', `/access?/${action}`, 'POST', 'person=1')).status).toBe(403);
		// names are not chosen from elsewhere
		const chosen = await write('engineer', '/settings?/person', 'POST', 'name=Eve');
		expect(chosen.body).toContain('Here people sign in');
		expect(
			(await write('owner', '/welcome?/name', 'POST', 'name=Eve')).headers['set-cookie']
		).toBeUndefined();
		expect(listPeople(server.ledger()).map(({ name }) => name)).not.toContain('Eve');
	});

	it('lets in by password with a cookie that no script reads, and out again', async () => {
		const form = `name=${encodeURIComponent(OWNER.name)}&password=${encodeURIComponent(OWNER.password)}`;
		const wrong = await write('nobody', '/sign-in', 'POST', 'name=Ada+Nowhere&password=x', {
			accept: 'text/html'
		});
		expect([wrong.status, wrong.headers['set-cookie']]).toEqual([400, undefined]);
		expect(wrong.body).toContain('Name and password do not belong together');
		const opened = await write('nobody', '/sign-in?to=/rides', 'POST', form);
		expect([opened.status, opened.headers.location]).toEqual([303, '/rides']);
		expect(opened.headers['set-cookie']).toEqual([
			expect.stringMatching(/^session=[\w-]{43}; Max-Age=2592000; Path=\/; HttpOnly; SameSite=Lax$/)
		]);
		for (const to of ['//evil.test', 'https://evil.test', '/\\evil.test', 'javascript:alert(1)'])
			expect(
				(await write('nobody', `/sign-in?to=${encodeURIComponent(to)}`, 'POST', form)).headers.location
			).toBe('/');
		const cookie = cookieOf(opened);
		const asThem = (path: string, method = 'GET') =>
			send(server, path, {
				method,
				headers: { host: `${HOST}:${server.port}`, cookie, origin: server.origin, accept: 'text/html' }
			});
		expect((await asThem('/access')).status).toBe(200);
		const left = await asThem('/sign-out', 'POST');
		expect(left.headers.location).toBe('/sign-in');
		expect((await asThem('/access')).headers.location).toBe('/sign-in?to=%2Faccess');
	});

	it('takes writes from its own pages alone, answers to its own name alone, and is kept by nobody', async () => {
		const from = (origin: string) => write('owner', '/access?/endAll', 'POST', 'person=2', { origin });
		for (const origin of ['http://evil.test', `http://127.0.0.1:${server.port}`, 'null'])
			expect((await from(origin)).status).toBe(403);
		for (const host of ['evil.test', `evil.test:${server.port}`, HOST])
			expect((await send(server, '/sign-in', { headers: { host } })).status).toBe(421);
		const page = await get('owner', '/access');
		expect(page.headers['cache-control']).toBe('private, no-store');
		expect(page.headers['content-security-policy']).toMatch(/default-src 'none'.*frame-ancestors 'none'/);
		expect(page.headers['referrer-policy']).toBe('same-origin');
	});

	it('says nothing in its log of who came in or by what', () => {
		const said = server.said();
		expect(said).toContain('"event":"server open"');
		const secrets = [
			OWNER.password,
			OWNER.name,
			'Ro Nowhere',
			...Object.values(cookies).map((one) => one.slice(8))
		];
		for (const secret of secrets) expect(said.includes(secret), secret.slice(0, 4)).toBe(false);
		expect(said).not.toMatch(/"event":"request failed"/);
	});
});
