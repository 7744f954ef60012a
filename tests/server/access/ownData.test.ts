import { describe, expect, it } from 'vitest';
import {
	attachFeltPhoto,
	attachFile,
	createPerson,
	createUpload,
	createWheel,
	hintsFrom,
	mayTouch,
	ownImports,
	ownRide,
	ownRides,
	recordFeltSlip,
	ROUTE_ROLES,
	type Actor
} from '$lib/server';
import { grayPng } from '$lib/server/example/grayPng';
import { addRide, freshLedger, slipAt, START_MS, withHardware, type TestLedger } from '../testLedger';

function riders(test: TestLedger): [Actor, Actor] {
	const make = (name: string): Actor => ({
		personId: createPerson(test.ledger, test.actor, { name, role: 'rider' }),
		name,
		role: 'rider'
	});
	return [make('Ro Nowhere'), make('Si Nowhere')];
}

describe("a rider's own rides", () => {
	it('are those that name the rider, and those handed in while nobody is named', async () => {
		const test = freshLedger();
		withHardware(test);
		const [ro, si] = riders(test);
		const named = await addRide(test, { startedAtMs: START_MS }, { riderId: ro.personId });
		const other = await addRide(test, { startedAtMs: START_MS + 1e7 }, { riderId: si.personId });
		const nobodys = await addRide(test, { startedAtMs: START_MS + 2e7 });
		const handedIn = await addRide({ ...test, actor: ro }, { startedAtMs: START_MS + 3e7 });
		const forOther = await addRide(
			{ ...test, actor: ro },
			{ startedAtMs: START_MS + 4e7 },
			{ riderId: si.personId }
		);
		const { rides, total } = ownRides(test.ledger, ro.personId, { page: 1, pageSize: 10 });
		expect(rides.map(({ id }) => id)).toEqual([handedIn, named]);
		expect(total).toBe(2);
		expect(ownRides(test.ledger, ro.personId, { page: 2, pageSize: 1 }).rides.map(({ id }) => id)).toEqual([
			named
		]);
		for (const id of [other, nobodys, forOther, 999, NaN])
			expect(ownRide(test.ledger, ro.personId, id)).toBeNull();
	});

	it('tell what was found and could be found, and nothing of hardware, other people or notes', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const [ro] = riders(test);
		const id = await addRide(test, { events: [slipAt(100)] }, { riderId: ro.personId, wheelId });
		const ride = ownRide(test.ledger, ro.personId, id)!;
		expect(ride.summary).toMatch(/1 event of the reference size or more was found on the 67 % of this ride/);
		expect(ride.events).toMatchObject([{ startS: 100, verdict: null }]);
		expect(JSON.stringify(ride)).not.toMatch(/Wheel A|Old|as it came|strength|gear|torque/i);
	});
});

describe('mayTouch', () => {
	it('lets riders touch their own rides and uploads alone, and others everything that their role allows', async () => {
		const test = freshLedger();
		const [ro, si] = riders(test);
		const id = String(await addRide(test, {}, { riderId: ro.personId }));
		const upload = await createUpload(test.ledger, ro, { name: 'a.fit', size: 10 });
		const may = (actor: Actor, route: string, of: string) =>
			mayTouch(() => test.ledger, actor, route, { id: of });
		for (const route of ['/own/[id]', '/rides/[id]/events.csv', '/rides/[id]/channels']) {
			expect(may(ro, route, id)).toBe(true);
			expect(may(si, route, id)).toBe(false);
			expect(may(test.actor, route, id)).toBe(true);
			for (const wrong of ['', '0', '-1', '1e3', `${id} OR 1`]) expect(may(ro, route, wrong)).toBe(false);
		}
		for (const route of ['/uploads/[id]', '/uploads/[id]/finish']) {
			expect(may(ro, route, upload.id)).toBe(true);
			expect(may(si, route, upload.id)).toBe(false);
		}
	});

	it('refuses riders every address with a number that it does not know', () => {
		const test = freshLedger();
		const [ro] = riders(test);
		expect(mayTouch(() => test.ledger, ro, '/wheels/[id]', { id: '1' })).toBe(false);
		expect(mayTouch(() => test.ledger, ro, '/something/[new]', { new: '1' })).toBe(false);
		expect(mayTouch(() => test.ledger, ro, '/own', {})).toBe(true);
	});

	it('knows every route with a parameter that riders may use', async () => {
		const test = freshLedger();
		const [ro] = riders(test);
		const ride = String(await addRide(test, {}, { riderId: ro.personId }));
		const { id: upload } = await createUpload(test.ledger, ro, { name: 'a.fit', size: 10 });
		const feltId = recordFeltSlip(test.ledger, ro, Number(ride), { clock: '10:20' });
		const of = { rideId: Number(ride), feltId };
		// numbers of rides and of photos are told apart by another attachment before
		await attachFile(test.ledger, test.actor, {
			subject: 'wheel',
			subjectId: createWheel(test.ledger, test.actor, { name: 'B', hub: '' }),
			name: 'n.txt',
			bytes: Buffer.from('a note')
		});
		const photo = await attachFeltPhoto(test.ledger, ro, of, {
			name: 'p.png',
			bytes: grayPng(1, 1, new Uint8Array(1))
		});
		const routes = Object.entries(ROUTE_ROLES)
			.filter(([id, { read, write }]) => id.includes('[') && [read, write].includes('rider'))
			.map(([id]) => id);
		expect(routes.length).toBeGreaterThan(4);
		for (const route of routes)
			expect([ride, upload, String(photo)].some((id) => mayTouch(() => test.ledger, ro, route, { id }))).toBe(
				true
			);
	});
});

describe('what a rider hands in', () => {
	it('is the rider’s own, whatever the request says, on wheels ridden before', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const [ro, si] = riders(test);
		const said = { riderId: si.personId, wheelId, wet: true, lapsMeanSlips: false, trainer: true, loadKg: 9 };
		expect(hintsFrom(test.ledger, ro, said)).toEqual({
			riderId: ro.personId,
			wet: true,
			lapsMeanSlips: false
		});
		expect(hintsFrom(test.ledger, test.actor, said)).toEqual(said);
		await addRide(test, {}, { riderId: ro.personId, wheelId });
		expect(hintsFrom(test.ledger, ro, said).wheelId).toBe(wheelId);
		expect(hintsFrom(test.ledger, si, said).wheelId).toBeUndefined();
	});

	it('stands in the own list of files and in nobody else’s', async () => {
		const test = freshLedger();
		const [ro, si] = riders(test);
		await createUpload(test.ledger, ro, { name: 'mine.fit', size: 10 });
		expect(ownImports(test.ledger, ro.personId, 5).map(({ fileName }) => fileName)).toEqual(['mine.fit']);
		expect(ownImports(test.ledger, si.personId, 5)).toEqual([]);
		// what was refused is told of every file, also beyond the newest few
		const add = test.ledger.database.prepare(
			`INSERT INTO import (file_name, bytes, stage, sentence, technical, actor_id, created_ms, changed_ms)
			VALUES (?, 1, ?, 'No ride.', 'quoted', ?, ?, ?)`
		);
		const now = test.ledger.now();
		test.ledger.database.transaction(() => {
			for (let i = 0; i < 40; i++) add.run(`${i}.fit`, i % 2 ? 'refused' : 'left out', si.personId, now, now);
			add.run('long ago.fit', 'refused', ro.personId, 0, 0);
			for (let i = 0; i < 6; i++) add.run('later.fit', 'left out', ro.personId, now, now);
		})();
		const told = ownImports(test.ledger, si.personId, 5);
		expect(told.filter(({ stage }) => stage === 'refused')).toHaveLength(20);
		expect(told.every(({ detail }) => detail === null)).toBe(true);
		expect(new Set(told.map(({ id }) => id)).size).toBe(told.length);
		expect(ownImports(test.ledger, ro.personId, 5).map(({ fileName }) => fileName)).not.toContain(
			'long ago.fit'
		);
	});
});
