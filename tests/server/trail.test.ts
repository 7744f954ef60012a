import { describe, expect, it } from 'vitest';
import {
	assignRide,
	historyOf,
	installExample,
	listTrail,
	recordService,
	recordVerdict,
	rideView,
	splitRide
} from '$lib/server';
import { leaveTrail } from '$lib/server/ledger/leaveTrail';
import { addPerson, actorOf } from '$lib/server/people/people';
import { addRide, freshLedger, slipAt, START_MS, withHardware } from './testLedger';

describe('listTrail', () => {
	it('says who changed what, with the words for before and after', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const rideId = await addRide(test);
		assignRide(test.ledger, test.actor, rideId, { wet: true, wheelId: null });
		const [entry] = listTrail(test.ledger, { page: 1, pageSize: 5 }).entries;
		expect(entry).toMatchObject({
			by: 'P1',
			action: 'assigned',
			subject: 'ride',
			thing: { name: 'ride.fit', href: `/rides/${rideId}` },
			facts: []
		});
		expect(entry.changes).toContainEqual({ what: 'wheel', before: 'Wheel A', after: 'nothing' });
		expect(entry.changes).toContainEqual({ what: 'wet', before: 'nothing', after: 'yes' });
		expect(wheelId).toBe(1);
	});

	it('is filtered by thing and by person, and paged', async () => {
		const test = freshLedger();
		withHardware(test);
		const other = actorOf(addPerson(test.ledger, { name: 'E', role: 'engineer', example: false }));
		const rideId = await addRide(test);
		assignRide(test.ledger, other, rideId, { wet: true });
		const all = listTrail(test.ledger, { page: 1, pageSize: 200 });
		expect(listTrail(test.ledger, { page: 1, pageSize: 9, subject: 'ride' }).total).toBe(2);
		const byOther = listTrail(test.ledger, { page: 1, pageSize: 9, actorId: other.personId });
		expect(byOther.entries.map(({ action, by }) => [action, by])).toEqual([['assigned', 'P2']]);
		const second = listTrail(test.ledger, { page: 2, pageSize: 2 });
		expect(second.entries.map(({ id }) => id)).toEqual(all.entries.slice(2, 4).map(({ id }) => id));
		expect(all.people.map(({ code }) => code)).toEqual(['P1', 'P2']);
		expect(all.subjects).toContain('fitted period');
	});

	it('shows no names of people, whatever an entry holds', () => {
		const test = freshLedger();
		leaveTrail(test.ledger, test.actor, 'corrected', 'person', test.actor.personId, {
			name: { before: 'Anna Example', after: 'Bert Example' },
			weightKg: { before: 70, after: 71 }
		});
		expect(JSON.stringify(listTrail(test.ledger, { page: 1, pageSize: 5 }))).not.toMatch(/Anna|Bert|70/);
	});

	it('bears what no longer exists, and values that it does not know', () => {
		const test = freshLedger();
		leaveTrail(test.ledger, test.actor, 'changed', 'thing of another time', 'x', {
			before: 1,
			after: { deep: [1, 2] },
			wheelId: 77,
			atMs: 0
		});
		const [entry] = listTrail(test.ledger, { page: 1, pageSize: 1 }).entries;
		expect(entry.thing).toEqual({ name: null, startedAt: null, href: null });
		expect(entry.changes).toEqual([{ what: 'value', before: '1', after: 'deep 1, 2' }]);
		expect(entry.facts[0]).toEqual({ what: 'wheel', value: 'number 77, not in the ledger any more' });
		expect(entry.facts[1].value).toContain('1970');
	});
});

describe('historyOf', () => {
	it('gathers what was done to a ride, its events and its laps', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test, { events: [slipAt(100)] });
		await addRide(test, { startedAtMs: Date.UTC(2026, 4, 6) });
		const [event] = rideView(test.ledger, rideId)!.eventList;
		recordVerdict(
			test.ledger,
			test.actor,
			event.id,
			{ verdict: 'confirmed', note: '' },
			{ rideId, verdictId: null }
		);
		expect(() => splitRide(test.ledger, test.actor, rideId)).toThrow();
		expect(historyOf(test.ledger, 'ride', rideId).map(({ subject, action }) => [subject, action])).toEqual([
			['event', 'confirmed'],
			['ride', 'handed in']
		]);
	});

	it('gathers what was fitted and serviced on a wheel, and says of each entry where it is shown', () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		recordService(test.ledger, test.actor, wheelId, {
			at: new Date(START_MS).toISOString(),
			opened: true,
			cleaned: false
		});
		const entries = historyOf(test.ledger, 'wheel', wheelId);
		expect(entries.map(({ action, subject, thing }) => [action, subject, thing.name, thing.href])).toEqual([
			['wrote down', 'service', 'on Wheel A', '/wheels/1'],
			['fitted', 'fitted period', 'Old on Wheel A', '/wheels/1'],
			['created', 'wheel', 'Wheel A', '/wheels/1']
		]);
	});

	it('finds the thing of every entry that the example leaves', async () => {
		const test = freshLedger();
		await installExample(test.ledger, test.actor);
		const { entries } = listTrail(test.ledger, { page: 1, pageSize: 200 });
		const lost = entries.filter(({ subject, thing }) => thing.name === null && subject !== 'source');
		expect([...new Set(lost.map(({ subject }) => subject))].sort()).toEqual(['example', 'spacer']);
	});
});
