import { describe, expect, it } from 'vitest';
import {
	bikeView,
	createBike,
	createWheel,
	listBikes,
	putWheelOnBike,
	takeGearCorrection,
	takeWheelOffBike,
	updateBike,
	wheelHistory,
	wheelView,
	withdrawRow
} from '$lib/server';
import { development } from '$lib/drivetrain/development';
import { addRide, freshLedger, HOUR_MS, rowsOf, START_MS, withHardware, type TestLedger } from './testLedger';

const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();
const BIKE = {
	name: 'Bike 1',
	chainrings: [46, 30],
	cassette: [34, 30, 26, 23, 20, 18, 16, 14, 13, 12, 11],
	speedSensor: 'rear hub',
	powerFrom: 'crank',
	motor: false
} as const;

/** what the analysis would have learned of a ride on a 40-tooth chainring */
const gears = (circumferenceM: number) =>
	[11, 13, 15, 18, 21, 25, 30].map((sprocket) => ({
		label: '',
		ratio: 40 / sprocket,
		developmentM: development(40, sprocket, circumferenceM),
		chainring: null,
		sprocket: null,
		seconds: 400
	}));

async function rideWith(test: TestLedger, circumferenceM: number) {
	const detail = {
		gears: gears(circumferenceM),
		warnings: [],
		sensors: [],
		marksS: [],
		gaps: [],
		pauses: []
	};
	return addRide(test, { detail });
}

describe('bikes', () => {
	it('are kept as they are stated, teeth in order, and refused when they cannot be', () => {
		const { ledger, actor } = freshLedger();
		const id = createBike(ledger, actor, BIKE);
		expect(bikeView(ledger, id)).toMatchObject({
			chainrings: [30, 46],
			cassette: [11, 12, 13, 14, 16, 18, 20, 23, 26, 30, 34],
			motor: false,
			rides: 0,
			gears: []
		});
		for (const wrong of [
			{ name: 'bike 1' },
			{ name: '' },
			{ name: 'B', chainrings: [46.5] },
			{ name: 'B', chainrings: [4] },
			{ name: 'B', circumferenceM: 0.1 },
			{ name: 'B', speedSensor: 'somewhere' as never }
		])
			expect(() => createBike(ledger, actor, wrong)).toThrow(
				expect.objectContaining({ code: wrong.name === 'bike 1' ? 'conflict' : 'wrong-value' })
			);
		expect(listBikes(ledger)).toHaveLength(1);
	});

	it('are not overwritten by the second of two people', () => {
		const { ledger, actor } = freshLedger();
		const id = createBike(ledger, actor, BIKE);
		updateBike(ledger, actor, id, { ...BIKE, motor: true }, 1);
		expect(() => updateBike(ledger, actor, id, { ...BIKE, name: 'Other' }, 1)).toThrow(
			expect.objectContaining({ code: 'conflict' })
		);
		expect(bikeView(ledger, id)).toMatchObject({ name: 'Bike 1', motor: true, rowVersion: 2 });
		const [{ detail }] = rowsOf(ledger, "SELECT detail FROM trail WHERE action = 'corrected'");
		expect(JSON.parse(String(detail))).toEqual({ motor: { before: 0, after: 1 } });
	});
});

describe('a wheel on a bike', () => {
	it('ends what was on that bike, and where that wheel was before', () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const other = createWheel(test.ledger, test.actor, { name: 'Wheel B', hub: '' });
		const [one, two] = ['One', 'Two'].map((name) => createBike(test.ledger, test.actor, { name }));
		putWheelOnBike(test.ledger, test.actor, { wheelId, bikeId: one, from: at(0) });
		putWheelOnBike(test.ledger, test.actor, { wheelId: other, bikeId: one, from: at(10) });
		putWheelOnBike(test.ledger, test.actor, { wheelId, bikeId: two, from: at(12) });
		putWheelOnBike(test.ledger, test.actor, { wheelId, bikeId: one, from: at(20) });
		expect(bikeView(test.ledger, one)!.onBike).toMatchObject([
			{ wheel: { name: 'Wheel A' }, from: at(20), until: null },
			{ wheel: { name: 'Wheel B' }, from: at(10), until: at(20) },
			{ wheel: { name: 'Wheel A' }, from: at(0), until: at(10) }
		]);
		expect(bikeView(test.ledger, two)!.onBike).toMatchObject([{ from: at(12), until: at(20) }]);
		expect(listBikes(test.ledger).map(({ wheel }) => wheel?.name ?? null)).toEqual(['Wheel A', null]);
	});

	it('refuses to be on two bikes at a time, also in the database itself', () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const [one, two] = ['One', 'Two'].map((name) => createBike(test.ledger, test.actor, { name }));
		putWheelOnBike(test.ledger, test.actor, { wheelId, bikeId: one, from: at(0), until: at(10) });
		expect(() =>
			putWheelOnBike(test.ledger, test.actor, { wheelId, bikeId: two, from: at(5), until: at(6) })
		).toThrow(expect.objectContaining({ code: 'overlap' }));
		expect(() =>
			test.ledger.database
				.prepare('INSERT INTO wheel_on_bike (wheel_id, bike_id, from_ms, created_ms) VALUES (?, ?, ?, 0)')
				.run(wheelId, two, START_MS)
		).toThrow('a wheel is on one bike at a time');
	});

	it('comes off, and is taken back with a reason', () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const bikeId = createBike(test.ledger, test.actor, { name: 'One' });
		const id = putWheelOnBike(test.ledger, test.actor, { wheelId, bikeId, from: at(0) });
		takeWheelOffBike(test.ledger, test.actor, id, at(3));
		expect(() => takeWheelOffBike(test.ledger, test.actor, id, at(4))).toThrow('came off already');
		withdrawRow(test.ledger, test.actor, 'wheel_on_bike', { id, wheelId }, 'it was never on it');
		expect(bikeView(test.ledger, bikeId)!.onBike).toEqual([]);
		expect(rowsOf(test.ledger, 'SELECT withdrawn_reason FROM wheel_on_bike')).toHaveLength(1);
	});
});

describe('the gears of a bike', () => {
	const stated = { name: 'One', chainrings: [40], cassette: [11, 13, 15, 18, 21, 25, 30] };

	it('stand beside those that its rides showed; a tyre that is off is offered and taken, with a trail', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const bikeId = createBike(test.ledger, test.actor, { ...stated, circumferenceM: 2.2 });
		putWheelOnBike(test.ledger, test.actor, { wheelId, bikeId, from: at(-9) });
		await rideWith(test, 2.05);
		const [shown] = bikeView(test.ledger, bikeId)!.gears;
		expect(shown).toMatchObject({ rides: 1, wheel: { id: wheelId }, stated: { circumferenceOf: 'bike' } });
		expect(shown.explained).toBeLessThan(0.2);
		expect(shown.correction!.change).toMatchObject({ kind: 'circumference', fromM: 2.2 });

		const seen = JSON.stringify(shown.correction!.change);
		expect(() => takeGearCorrection(test.ledger, test.actor, bikeId, wheelId, '{}')).toThrow(
			expect.objectContaining({ code: 'conflict' })
		);
		takeGearCorrection(test.ledger, test.actor, bikeId, wheelId, seen);
		const after = bikeView(test.ledger, bikeId)!;
		expect(after.circumferenceM! / 2.05).toBeCloseTo(1, 2);
		expect(after.gears[0]).toMatchObject({ explained: 1, correction: null });
		const [{ detail }] = rowsOf(test.ledger, "SELECT detail FROM trail WHERE action = 'corrected'");
		expect(JSON.parse(String(detail))).toMatchObject({ why: 'learned from 1 ride' });
	});

	it("are the wheel's where the wheel states cassette and tyre, and are corrected there", async () => {
		const test = freshLedger();
		const wheelId = createWheel(test.ledger, test.actor, {
			name: 'W',
			hub: '',
			tyreEtrto: '40-622',
			cassette: [11, 13, 15, 18, 21, 27, 30]
		});
		const bikeId = createBike(test.ledger, test.actor, { ...stated, cassette: [11, 40] });
		putWheelOnBike(test.ledger, test.actor, { wheelId, bikeId, from: at(-9) });
		await addRide(
			test,
			{ detail: { gears: gears(2.205), warnings: [], sensors: [], marksS: [], gaps: [], pauses: [] } },
			{ wheelId }
		);
		const [shown] = bikeView(test.ledger, bikeId)!.gears;
		expect(shown.stated).toMatchObject({ cassetteOf: 'wheel', circumferenceOf: 'tyre size' });
		expect(shown.correction!.change).toEqual({ kind: 'sprocket', fromTeeth: 27, toTeeth: 25 });
		takeGearCorrection(test.ledger, test.actor, bikeId, wheelId, JSON.stringify(shown.correction!.change));
		expect(wheelView(test.ledger, wheelId)!.facts.cassette).toEqual([11, 13, 15, 18, 21, 25, 30]);
		expect(bikeView(test.ledger, bikeId)!.cassette).toEqual([11, 40]);
	});
});

describe('corrected distance', () => {
	it('stands beside the recorded one where both circumferences are known, and counts nowhere', async () => {
		const test = freshLedger();
		const wheelId = createWheel(test.ledger, test.actor, { name: 'W', hub: '', circumferenceM: 2.2 });
		const bikeId = createBike(test.ledger, test.actor, { name: 'One', speedSensor: 'rear hub' });
		const on = { wheelId, bikeId, from: at(-9), deviceCircumferenceM: 2 };
		const id = putWheelOnBike(test.ledger, test.actor, on);
		await addRide(test, { totalM: 10_000 }, { wheelId });
		const history = wheelHistory(test.ledger, wheelId);
		expect(history.corrected).toMatchObject({ rides: 1, recordedM: 10_000 });
		expect(history.corrected!.correctedM).toBeCloseTo(11_000, 6);
		expect(history.totalM).toBe(10_000);
		// a sensor on the front wheel says nothing about this tyre
		updateBike(test.ledger, test.actor, bikeId, { name: 'One', speedSensor: 'front hub' }, 1);
		expect(wheelHistory(test.ledger, wheelId).corrected).toBeNull();
		expect(id).toBeGreaterThan(0);
	});
});
