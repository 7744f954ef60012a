import { describe, expect, it } from 'vitest';
import {
	createWheel,
	decideTwin,
	falseAlarms,
	programmeRows,
	recordVerdict,
	rideView,
	setKnownGood,
	wheelView,
	withdrawRide
} from '$lib/server';
import { addRide, freshLedger, HOUR_MS, rowsOf, slipAt, START_MS, withHardware } from './testLedger';

/** A ledger with a wheel under test and a reference wheel without a build. */
function withReference() {
	const test = freshLedger();
	const { wheelId } = withHardware(test);
	const goodId = createWheel(test.ledger, test.actor, { name: 'Reference', hub: '' });
	setKnownGood(test.ledger, test.actor, goodId, true);
	const ride = (hour: number, onWheel: number, more = {}) =>
		addRide(test, { startedAtMs: START_MS + hour * 2 * HOUR_MS, ...more }, { wheelId: onWheel });
	return { test, wheelId, goodId, ride };
}

describe('falseAlarms', () => {
	it('says that nothing is known until a wheel known to be good was ridden', async () => {
		const { test, wheelId, ride } = withReference();
		await ride(0, wheelId, { events: [slipAt(100)] });
		expect(falseAlarms(test.ledger)).toMatchObject({
			wheels: [{ name: 'Reference' }],
			pooled: { events: 0, rides: 0, observedM: 0, ratePerThousandKm: null, upperPerThousandKm: null },
			kinds: []
		});
	});

	it("gives events per 1000 observed km with Garwood's limits, for rides of such wheels alone", async () => {
		const { test, wheelId, goodId, ride } = withReference();
		await ride(0, wheelId, { events: [slipAt(100), slipAt(300)] });
		await ride(1, goodId, { observedM: 60_000 });
		// Garwood 1936: 0 events up to 3.689 at 95 %
		const none = falseAlarms(test.ledger).pooled;
		expect(none).toMatchObject({ events: 0, rides: 1, ratePerThousandKm: 0, lowerPerThousandKm: 0 });
		expect(none.upperPerThousandKm).toBeCloseTo(3.689 / 0.06, 1);
		await ride(2, goodId, { observedM: 40_000, events: [slipAt(100), slipAt(200, { observed: false })] });
		const one = falseAlarms(test.ledger).pooled;
		expect(one).toMatchObject({ events: 1, rides: 2, observedM: 100_000, ratePerThousandKm: 10 });
		// Garwood 1936: 1 event 0.0253 to 5.572 at 95 %
		expect(one.lowerPerThousandKm).toBeCloseTo(0.253, 3);
		expect(one.upperPerThousandKm).toBeCloseTo(55.72, 2);
	});

	it('does not change with verdicts, and names what was confirmed on such a wheel', async () => {
		const { test, goodId, ride } = withReference();
		const rideId = await ride(0, goodId, { events: [slipAt(100), slipAt(300)] });
		const [first, second] = rideView(test.ledger, rideId)!.eventList;
		recordVerdict(test.ledger, test.actor, first.id, { verdict: 'rejected', reason: 'sensor' });
		recordVerdict(test.ledger, test.actor, second.id, { verdict: 'confirmed' });
		expect(falseAlarms(test.ledger).pooled).toMatchObject({ events: 2, confirmed: 1 });
	});

	it('keeps kinds of recordings apart: source of the speed and rhythm of the records', async () => {
		const { test, goodId, ride } = withReference();
		await ride(0, goodId, {
			recording: { speedFrom: 'position', rhythm: 'each second' },
			events: [slipAt(9)]
		});
		await ride(1, goodId, { observedM: 30_000 });
		const { kinds, pooled } = falseAlarms(test.ledger);
		expect(kinds).toMatchObject([
			{ speedFrom: 'wheel', rhythm: 'each second', events: 0, observedM: 30_000 },
			{ speedFrom: 'position', rhythm: 'each second', events: 1, observedM: 20_000 }
		]);
		expect(kinds.reduce((sum, kind) => sum + kind.observedM, 0)).toBe(pooled.observedM);
	});

	it('leaves out withdrawn rides and recordings that may be another one', async () => {
		const { test, goodId, ride } = withReference();
		const kept = await ride(0, goodId);
		const again = await ride(0, goodId);
		expect(rideView(test.ledger, again)!.twinOf?.id).toBe(kept);
		expect(falseAlarms(test.ledger).pooled.rides).toBe(1);
		decideTwin(test.ledger, test.actor, again, 'different ride');
		expect(falseAlarms(test.ledger).pooled.rides).toBe(2);
		withdrawRide(test.ledger, test.actor, again, 'wrong wheel');
		expect(falseAlarms(test.ledger).pooled.rides).toBe(1);
	});

	it('counts rides whose build nobody wrote down: which build does not matter on a wheel that is good', async () => {
		const { test, goodId, ride } = withReference();
		const rideId = await ride(0, goodId);
		expect(rideView(test.ledger, rideId)!.state).toBe('needs an answer');
		expect(falseAlarms(test.ledger).pooled.rides).toBe(1);
		expect(programmeRows(test.ledger)[0].rides).toBe(0);
	});
});

describe('setKnownGood', () => {
	it('is kept with a trail and can be taken back', () => {
		const { test, goodId } = withReference();
		expect(wheelView(test.ledger, goodId)!.knownGood).toBe(true);
		setKnownGood(test.ledger, test.actor, goodId, true);
		setKnownGood(test.ledger, test.actor, goodId, false);
		expect(wheelView(test.ledger, goodId)!.knownGood).toBe(false);
		const trail = rowsOf(test.ledger, "SELECT detail FROM trail WHERE action = 'assigned' ORDER BY id");
		expect(trail.map(({ detail }) => JSON.parse(detail as string).knownGood)).toEqual([
			{ before: false, after: true },
			{ before: true, after: false }
		]);
	});

	it('refuses a wheel that is not there', () => {
		const { test } = withReference();
		expect(() => setKnownGood(test.ledger, test.actor, 99, true)).toThrow('no such wheel');
	});
});
