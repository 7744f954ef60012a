import { describe, expect, it } from 'vitest';
import { assignRide, LedgerRefusal, rideAnswersView, rideView } from '$lib/server';
import { actorOf, addPerson } from '$lib/server/people/people';
import { addRide, freshLedger, rowsOf, withHardware, type TestLedger } from './testLedger';

function addBike({ ledger }: TestLedger, name: string, motor: number | null = null): number {
	const { lastInsertRowid } = ledger.database
		.prepare('INSERT INTO bike (name, motor, created_ms) VALUES (?, ?, 0)')
		.run(name, motor);
	return Number(lastInsertRowid);
}

describe('assignRide', () => {
	it('keeps every answer with who gave it, and takes it back as "not said"', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const rideId = await addRide(test);
		const engineer = actorOf(addPerson(test.ledger, { name: 'E', role: 'engineer', example: false }));
		assignRide(test.ledger, engineer, rideId, {
			bikeId: addBike(test, 'Tourer'),
			surface: 'gravel road',
			loadKg: 12.5,
			motor: false,
			wet: true
		});
		expect(rideAnswersView(test.ledger, rideId)).toMatchObject({
			wheel: { id: wheelId, knownGood: false },
			bike: { name: 'Tourer' },
			surface: 'gravel road',
			loadKg: 12.5,
			motor: false,
			fileMotor: null,
			wet: true,
			who: { surface: { by: 'P2' }, loadKg: { by: 'P2' }, wheelId: { by: 'P1' } }
		});
		assignRide(test.ledger, test.actor, rideId, { surface: null, loadKg: null });
		expect(rideAnswersView(test.ledger, rideId)).toMatchObject({ surface: null, loadKg: null });
	});

	it.each([
		[{ loadKg: -1 }, 'wrong-value'],
		[{ loadKg: 301 }, 'wrong-value'],
		[{ loadKg: NaN }, 'wrong-value'],
		[{ surface: 'moon' }, 'wrong-value'],
		[{ wet: 'very' }, 'wrong-value'],
		[{ bikeId: 5 }, 'not-found'],
		[{ riderId: 1.5 }, 'not-found']
	])('refuses %j and changes nothing', async (answers, code) => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test);
		const before = rowsOf(test.ledger, 'SELECT * FROM ride');
		const change = () =>
			assignRide(test.ledger, test.actor, rideId, { wet: true, ...answers } as Parameters<
				typeof assignRide
			>[3]);
		expect(change).toThrow(LedgerRefusal);
		expect(change).toThrow(expect.objectContaining({ code }));
		expect(rowsOf(test.ledger, 'SELECT * FROM ride')).toEqual(before);
	});

	it('tells the second of two people who correct the same answer, and lets both correct different ones', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test);
		assignRide(test.ledger, test.actor, rideId, { surface: 'tarmac' }, { surface: null });
		expect(() =>
			assignRide(test.ledger, test.actor, rideId, { surface: 'mixed' }, { surface: null })
		).toThrow('P1 has changed this ride meanwhile');
		assignRide(test.ledger, test.actor, rideId, { wet: true }, { wet: null });
		expect(rideAnswersView(test.ledger, rideId)).toMatchObject({ surface: 'tarmac', wet: true });
	});

	it('leaves a ride out when a person says that a motor helped, and counts it when they say it did not', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test, { motorAssisted: true });
		expect(rideView(test.ledger, rideId)!.state).toBe('left out');
		assignRide(test.ledger, test.actor, rideId, { motor: false });
		expect(rideView(test.ledger, rideId)!.state).toBe('counted');
		assignRide(test.ledger, test.actor, rideId, { motor: true });
		expect(rideView(test.ledger, rideId)!.state).toBe('left out');
	});
});
