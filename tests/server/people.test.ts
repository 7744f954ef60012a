import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
	actorOf,
	anonymisePerson,
	choosePerson,
	createPerson,
	findPerson,
	listRides,
	peopleFacts,
	personOfToken,
	personToken,
	rideView,
	updatePerson,
	withdrawRide
} from '$lib/server';
import { addRide, freshLedger, rowsOf, slipAt, withHardware, type TestLedger } from './testLedger';

const NAME = 'Zyxomma Quellbrand';
const bytesOf = ({ ledger }: TestLedger) =>
	readdirSync(ledger.folder)
		.filter((name) => name.startsWith('ledger.sqlite'))
		.map((name) => readFileSync(join(ledger.folder, name)).toString('latin1'))
		.join('');

describe('people', () => {
	it('have a name and a weight in one table, and in the trail only that these changed', () => {
		const { ledger, actor } = freshLedger();
		const id = createPerson(ledger, actor, { name: NAME, role: 'rider', weightKg: 71 });
		updatePerson(ledger, actor, id, { name: 'Other Person', role: 'rider', weightKg: 72.5 }, 1);
		expect(peopleFacts(ledger, actor)[1]).toMatchObject({ name: 'Other Person', weightKg: 72.5, code: 'P2' });
		const trail = rowsOf(ledger, "SELECT detail FROM trail WHERE subject = 'person'").map(
			(row) => row.detail
		);
		expect(trail.join()).not.toMatch(/Zyxomma|Other|72/);
		expect(trail[trail.length - 1]).toBe('{"name":"changed","weight":"changed"}');
	});

	it('refuses absurd weights, taken names and an older form', () => {
		const { ledger, actor } = freshLedger();
		const id = createPerson(ledger, actor, { name: NAME, role: 'rider' });
		const change = (input: object, version = 1) =>
			updatePerson(ledger, actor, id, { name: NAME, role: 'rider', ...input }, version);
		expect(() => change({ weightKg: 7 })).toThrow(expect.objectContaining({ code: 'wrong-value' }));
		expect(() => change({ weightKg: NaN })).toThrow(expect.objectContaining({ code: 'wrong-value' }));
		expect(() => change({ name: 'owner OF the test' })).toThrow(
			expect.objectContaining({ code: 'conflict' })
		);
		expect(() => change({ weightKg: 70 }, 0)).toThrow(expect.objectContaining({ code: 'conflict' }));
	});

	it('lets only an owner give roles, keeps one owner, and shows riders only themselves', () => {
		const { ledger, actor } = freshLedger();
		const rider = createPerson(ledger, actor, { name: NAME, role: 'rider' });
		const asRider = { personId: rider, name: NAME, role: 'rider' as const };
		const engineer = actorOf(choosePerson(ledger, 'Engineer'));
		const allowed = (run: () => void) =>
			expect(run).toThrow(expect.objectContaining({ code: 'not-allowed' }));
		allowed(() => updatePerson(ledger, engineer, rider, { name: NAME, role: 'owner' }, 1));
		allowed(() => updatePerson(ledger, asRider, engineer.personId, { name: 'X', role: 'engineer' }, 1));
		allowed(() => createPerson(ledger, asRider, { name: 'Y', role: 'rider' }));
		allowed(() => anonymisePerson(ledger, engineer, rider));
		expect(() => updatePerson(ledger, actor, actor.personId, { name: actor.name, role: 'rider' }, 1)).toThrow(
			'needs an owner'
		);
		expect(() => anonymisePerson(ledger, actor, actor.personId)).toThrow('needs an owner');
		expect(peopleFacts(ledger, asRider).map(({ id }) => id)).toEqual([rider]);
	});
});

describe('anonymisePerson', () => {
	it('takes the name out of the ledger and its files, and leaves code, rides and verdicts', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		withHardware(test);
		const person = choosePerson(ledger, NAME);
		const rideId = await addRide(test, { events: [slipAt(50)] }, { riderId: person.id });
		withdrawRide(ledger, actorOf(person), rideId, 'ridden on another wheel');
		expect(bytesOf(test)).toContain(NAME);
		const token = personToken(ledger, person);
		expect(personOfToken(ledger, token)?.id).toBe(person.id);

		expect(anonymisePerson(ledger, actor, person.id)).toEqual([]);
		expect(bytesOf(test)).not.toContain(NAME);
		expect(findPerson(ledger, person.id)).toMatchObject({
			name: `Anonymised ${person.code}`,
			code: person.code
		});
		expect(rideView(ledger, rideId)!.rider).toEqual({ id: person.id, code: person.code });
		expect(listRides(ledger, { page: 1, pageSize: 10 }).total).toBe(1);
		expect(rowsOf(ledger, `SELECT 1 FROM trail WHERE actor_id = ${person.id}`).length).toBeGreaterThan(0);
		// the browser that kept the name has to choose one again, and nobody takes over the code
		expect(personOfToken(ledger, token)).toBeNull();
		expect(() => choosePerson(ledger, `Anonymised ${person.code}`)).toThrow('somebody else');
		expect(choosePerson(ledger, NAME).id).not.toBe(person.id);
		expect(() => anonymisePerson(ledger, actor, person.id)).toThrow('already');
	});

	it('tells where the name was also written by hand', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test);
		withdrawRide(test.ledger, test.actor, rideId, `it was the bike of ${NAME.toUpperCase()}`);
		const id = createPerson(test.ledger, test.actor, { name: NAME, role: 'rider', weightKg: 70 });
		expect(anonymisePerson(test.ledger, test.actor, id)).toEqual([
			{ table: 'ride', column: 'withdrawn_reason', rows: 1 },
			{ table: 'trail', column: 'detail', rows: 1 }
		]);
		expect(rowsOf(test.ledger, `SELECT weight_kg FROM person WHERE id = ${id}`)).toEqual([
			{ weight_kg: null }
		]);
	});
});
