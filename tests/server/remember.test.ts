import { describe, expect, it } from 'vitest';
import {
	assignRide,
	createBuild,
	fitBuild,
	openLedger,
	programmeRows,
	recordVerdict,
	rideView,
	withdrawRide
} from '$lib/server';
import { evidenceKey, remember } from '$lib/server/ledger/remember';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from './testLedger';

describe('remember', () => {
	it('computes once for the same evidence, and anew after every change', async () => {
		const test = freshLedger();
		let computed = 0;
		const ask = () => remember(test.ledger, 'answer', () => ++computed);
		expect([ask(), ask()]).toEqual([1, 1]);
		await addRide(test);
		expect([ask(), ask()]).toEqual([2, 2]);
	});

	it('sees what another process changed', async () => {
		const test = freshLedger();
		withHardware(test);
		const other = openLedger(test.ledger.folder, { migrate: false });
		expect(programmeRows(other)[0].rides).toBe(0);
		const rideId = await addRide(test, { events: [slipAt(9)] });
		expect(programmeRows(other)[0].rides).toBe(1);
		const [event] = rideView(test.ledger, rideId)!.eventList;
		recordVerdict(test.ledger, test.actor, event.id, { verdict: 'confirmed' });
		expect(programmeRows(other)[0].counted.confirmed).toBe(1);
		other.close();
	});

	it('keeps nothing of a transaction that is taken back', () => {
		const { ledger } = freshLedger();
		const people = () => ledger.database.prepare('SELECT count(*) AS n FROM person').get();
		const ask = () => remember(ledger, 'people', people);
		const add = (name: string) =>
			ledger.database
				.prepare("INSERT INTO person (name, code, role, created_ms) VALUES (?, ?, 'rider', 0)")
				.run(name, name);
		const takenBack = ledger.database.transaction(() => {
			add('a');
			add('b');
			expect(ask()).toEqual({ n: 3 });
			throw new Error('taken back');
		});
		expect(takenBack).toThrow('taken back');
		ledger.database.transaction(() => add('c'))();
		ledger.database.exec("UPDATE person SET role = 'rider' WHERE name = 'c'");
		expect(ask()).toEqual({ n: 2 });
	});

	it('has a new key after everything that statistics are made of', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const { wheelId } = withHardware(test);
		const rideId = await addRide(test, { events: [slipAt(9)] });
		const buildId = createBuild(ledger, actor, { name: 'New', description: '' });
		const [event] = rideView(ledger, rideId)!.eventList;
		const from = new Date(START_MS + 50 * HOUR_MS).toISOString();
		for (const change of [
			() => recordVerdict(ledger, actor, event.id, { verdict: 'confirmed' }),
			() => assignRide(ledger, actor, rideId, { buildId }),
			() => fitBuild(ledger, actor, { wheelId, buildId, from }),
			() => withdrawRide(ledger, actor, rideId, 'a reason'),
			() => ledger.database.exec("INSERT INTO setting VALUES ('analysisVersion', '7')")
		]) {
			const before = evidenceKey(ledger);
			change();
			expect(evidenceKey(ledger)).toBeGreaterThan(before);
		}
	});
});
