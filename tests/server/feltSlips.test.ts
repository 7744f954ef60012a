import { describe, expect, it } from 'vitest';
import {
	correctRideClock,
	createPerson,
	listRides,
	recordFeltSlip,
	recordVerdict,
	rideView,
	setSettings,
	takeBackFeltSlip
} from '$lib/server';
import { addRide, freshLedger, HOUR_MS, rowsOf, slipAt, START_MS, withHardware } from './testLedger';

// the ride begins at 08:00 UTC and its recorder is two hours ahead: the rider's watch shows 10:00 to 11:00
const atClock = (test: ReturnType<typeof freshLedger>, rideId: number, clock: string) => {
	recordFeltSlip(test.ledger, test.actor, rideId, { clock });
	const felt = rideView(test.ledger, rideId)!.felt;
	return felt[felt.length - 1];
};

describe('a slip that was felt, about when', () => {
	it('is taken by the watch of the ride and held against events within three minutes', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test, { events: [slipAt(700), slipAt(1100), slipAt(1400)] });
		const felt = atClock(test, rideId, '10:20');
		expect(felt).toMatchObject({ timeS: 1200, at: new Date(START_MS + 1200_000).toISOString(), by: 'P1' });
		const ids = rideView(test.ledger, rideId)!.eventList.map(({ id }) => id);
		expect(felt.events).toEqual([ids[1]]);
		recordVerdict(
			test.ledger,
			test.actor,
			ids[1],
			{ verdict: 'rejected', reason: 'shift', note: '' },
			{ rideId, verdictId: null }
		);
		expect(rideView(test.ledger, rideId)!.felt[0].events).toEqual([]);
		expect(listRides(test.ledger, { pageSize: 5 }).rows[0].feltSlips).toBe(1);
	});

	it('changes no figure: neither what the ride counts nor whether it waits', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test, { events: [slipAt(700)] });
		const { felt: before, feltSlips: none, ...was } = rideView(test.ledger, rideId)!;
		const evidence = rowsOf(test.ledger, 'SELECT changes FROM evidence');
		atClock(test, rideId, '10:11');
		const { felt, feltSlips, ...is } = rideView(test.ledger, rideId)!;
		expect([before.length, none, felt.length, feltSlips]).toEqual([0, 0, 1, 1]);
		expect(is).toEqual(was);
		expect(rowsOf(test.ledger, 'SELECT changes FROM evidence')).toEqual(evidence);
	});

	it('finds the right day across midnight, and the workshop’s zone where the ride has none', async () => {
		const test = freshLedger();
		const night = { startedAtMs: Date.UTC(2026, 4, 4, 21, 30), durationS: 3600 };
		const late = await addRide(test, night);
		expect(atClock(test, late, '23:45').at).toBe('2026-05-04T21:45:00.000Z');
		expect(atClock(test, late, '00:15').at).toBe('2026-05-04T22:15:00.000Z');
		setSettings(test.ledger, test.actor, { timeZone: 'Asia/Tokyo' });
		const zoned = await addRide(test, { startedAtMs: START_MS + 24 * HOUR_MS, localOffsetS: null });
		expect(atClock(test, zoned, '17:30').at).toBe('2026-05-05T08:30:00.000Z');
	});

	it('takes the first and the last minute of the ride, and refuses what lies outside', async () => {
		const test = freshLedger();
		const rideId = await addRide(test, { startedAtMs: START_MS + 40_000 });
		for (const clock of ['10:00', '11:00', '9:58'])
			recordFeltSlip(test.ledger, test.actor, rideId, { clock });
		for (const clock of ['09:54', '11:06', '20:20', '08:20'])
			expect(() => recordFeltSlip(test.ledger, test.actor, rideId, { clock })).toThrow('not under way');
		for (const clock of ['', '25:00', '10:60', '10', '10:20:30', "10:20'"])
			expect(() => recordFeltSlip(test.ledger, test.actor, rideId, { clock })).toThrow('as in 14:20');
		expect(() => recordFeltSlip(test.ledger, test.actor, rideId, { clock: '10:00' })).toThrow('already');
		expect(() => recordFeltSlip(test.ledger, test.actor, 99, { clock: '10:00' })).toThrow('no such ride');
	});

	it('is taken back by whoever said so or by the workshop, and leaves both in the trail', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const rideId = await addRide(test);
		const rider = {
			personId: createPerson(ledger, actor, { name: 'Ro', role: 'rider' }),
			name: 'Ro',
			role: 'rider' as const
		};
		const ofOwner = recordFeltSlip(ledger, actor, rideId, { clock: '10:10' });
		const ofRider = recordFeltSlip(ledger, rider, rideId, { clock: '10:20', note: 'crank went through' });
		expect(() => takeBackFeltSlip(ledger, rider, rideId, ofOwner)).toThrow('themselves');
		expect(() => takeBackFeltSlip(ledger, rider, rideId + 1, ofRider)).toThrow('not written down');
		takeBackFeltSlip(ledger, rider, rideId, ofRider);
		expect(() => takeBackFeltSlip(ledger, rider, rideId, ofRider)).toThrow('not written down');
		expect(rideView(ledger, rideId)!.felt.map(({ id }) => id)).toEqual([ofOwner]);
		expect(rowsOf(ledger, "SELECT action FROM trail WHERE action LIKE '%felt%'")).toHaveLength(3);
	});

	it('moves along when the clock of its ride is corrected', async () => {
		const test = freshLedger();
		const rideId = await addRide(test, { events: [slipAt(1200)] });
		atClock(test, rideId, '10:20');
		correctRideClock(test.ledger, test.actor, rideId, new Date(START_MS + 5 * HOUR_MS).toISOString());
		expect(rideView(test.ledger, rideId)!.felt[0]).toMatchObject({
			timeS: 1200,
			events: [expect.any(Number)]
		});
	});
});
