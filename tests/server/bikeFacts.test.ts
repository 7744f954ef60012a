import { describe, expect, it } from 'vitest';
import { recordVerdict, rideView, undoVerdict } from '$lib/server';
import { bikeFacts } from '$lib/server/queue/bikeFacts';
import { bikesOfRides } from '$lib/server/queue/bikeOfRide';
import {
	beginDerivation,
	failDerivation,
	listDerivations,
	releaseDerivation,
	saveDerivation
} from '$lib/server/queue/derivations';
import { MOST_ATTEMPTS } from '$lib/server/queue/importQueue';
import { countComputingAgain, rideStages } from '$lib/server/versions/rideStages';
import type { Bike } from '$lib/drivetrain/bike';
import type { SlipEvent } from '$lib/slip/analysis';
import { addRide, analysedFile, freshLedger, rowsOf, slipAt, START_MS, withHardware } from './testLedger';

const toldOf = (bike: Bike, events: SlipEvent[] = []) => {
	const file = analysedFile({ events });
	return { ...file, detail: { ...file.detail, bike } };
};

async function rideOnWheel() {
	const test = freshLedger();
	const { wheelId } = withHardware(test);
	const rideId = await addRide(test, { events: [slipAt(100), slipAt(500)] }, { wheelId });
	return { ...test, wheelId, rideId };
}

describe('bikeFacts', () => {
	it('is one key for the same facts, in whatever order teeth and fields come', () => {
		const key = bikeFacts({ chainrings: [46, 30], cassette: [11, 13, 15], circumferenceM: 2.2 });
		expect(key).toMatch(/^[0-9a-f]{32}$/);
		expect(bikeFacts({ circumferenceM: 2.200001, cassette: [15, 11, 13], chainrings: [30, 46] })).toBe(key);
	});

	it('is another key for each fact that differs, and empty for a bike of which nothing is known', () => {
		const bikes: Bike[] = [
			{},
			{ circumferenceM: 2.2 },
			{ circumferenceM: 2.21 },
			{ powerAt: 'hub' },
			{ powerAt: 'crank' },
			{ speedSensor: 'front' },
			{ chainrings: [40] },
			{ cassette: [40] }
		];
		expect(new Set(bikes.map(bikeFacts)).size).toBe(bikes.length);
		expect(bikeFacts({ chainrings: [], cassette: [] })).toBe('');
	});
});

describe('the bike of a ride', () => {
	it('is the one that a person named, else the one that carried the wheel then; tyre and cassette go by the wheel', () => {
		const { ledger } = freshLedger();
		ledger.database.exec(`
			INSERT INTO wheel (id, name, hub, circumference_m, cassette, created_ms) VALUES
				(1, 'W1', 'h', 2.18, '[11,13,15]', 0), (2, 'W2', 'h', NULL, NULL, 0);
			INSERT INTO bike (id, name, chainrings, cassette, circumference_m, speed_sensor, power_from, created_ms) VALUES
				(1, 'B1', '[46,30]', '[12,14]', 2.1, 'rear hub', 'pedals', 0),
				(2, 'B2', '[40]', NULL, NULL, 'GPS', 'hub', 0);
			INSERT INTO wheel_on_bike (wheel_id, bike_id, from_ms, until_ms, created_ms) VALUES
				(1, 1, 1000, 2000, 0), (2, 1, 2000, NULL, 0);`);
		const bikeOf = bikesOfRides(ledger);
		const ridden = { bikeId: null, wheelId: 1, startMs: 1500 };
		expect(bikeOf(ridden)).toEqual({
			cassette: [11, 13, 15],
			chainrings: [30, 46],
			circumferenceM: 2.18,
			powerAt: 'crank',
			speedSensor: 'rear'
		});
		expect(bikeOf({ ...ridden, startMs: 2000 })).toEqual({ cassette: [11, 13, 15], circumferenceM: 2.18 });
		expect(bikeOf({ ...ridden, startMs: null })).toMatchObject({ chainrings: [30, 46] });
		expect(bikeOf({ ...ridden, bikeId: 2 })).toEqual({
			cassette: [11, 13, 15],
			chainrings: [40],
			circumferenceM: 2.18,
			powerAt: 'hub',
			speedSensor: 'gps'
		});
		expect(bikeOf({ bikeId: null, wheelId: 2, startMs: 3000 })).toMatchObject({ circumferenceM: 2.1 });
		expect(bikeOf({ bikeId: null, wheelId: null, startMs: 0 })).toEqual({});
	});
});

describe('a file that is handed in with its bike', () => {
	it('becomes a ride of that bike; a bike that does not exist is refused', async () => {
		const test = freshLedger();
		test.ledger.database.exec(
			"INSERT INTO bike (id, name, circumference_m, created_ms) VALUES (3, 'B', 2.1, 0)"
		);
		const rideId = await addRide(test, {}, { bikeId: 3 });
		expect(rowsOf(test.ledger, `SELECT bike_id FROM ride WHERE id = ${rideId}`)).toEqual([{ bike_id: 3 }]);
		await expect(addRide(test, { startedAtMs: START_MS + 1e7 }, { bikeId: 4 })).rejects.toThrow(
			'no such bike'
		);
	});
});

describe('a ride whose bike is known otherwise than when it was analysed', () => {
	it('is derived again at the same version and replaced as a whole, with its verdicts', async () => {
		const { ledger, holder, actor, wheelId, rideId } = await rideOnWheel();
		const [first, second] = rideView(ledger, rideId)!.eventList;
		recordVerdict(ledger, actor, first.id, { verdict: 'confirmed' });
		expect(listDerivations(ledger)).toEqual([]);
		ledger.database.prepare('UPDATE wheel SET circumference_m = 2.2 WHERE id = ?').run(wheelId);
		const [derivation] = listDerivations(ledger);
		expect(derivation).toMatchObject({ rideId, bike: { circumferenceM: 2.2 } });
		expect(rideStages(ledger, rideId)?.again).toEqual({ state: 'queued' });
		expect(countComputingAgain(ledger)).toBe(1);
		expect(rideView(ledger, rideId)!.eventList).toHaveLength(2);

		const file = toldOf(derivation.bike, [slipAt(101)]);
		saveDerivation(ledger, holder, derivation, file);
		const { eventList } = rideView(ledger, rideId)!;
		expect(eventList).toMatchObject([{ startS: 101, verdict: { verdict: 'confirmed' } }]);
		// an old page that still shows the vanished event must not reach another one
		expect(eventList[0].id).toBeGreaterThan(second.id);
		expect(() => undoVerdict(ledger, actor, second.id, { rideId })).toThrow('no such event');
		expect(rowsOf(ledger, 'SELECT bike_facts FROM result')).toEqual([
			{ bike_facts: bikeFacts(derivation.bike) }
		]);
		expect(rowsOf(ledger, 'SELECT 1 FROM slip_event')).toHaveLength(1);
		expect(rowsOf(ledger, 'SELECT 1 FROM observed_stretch')).toHaveLength(1);
		expect(listDerivations(ledger)).toEqual([]);
		expect(rideStages(ledger, rideId)?.again).toBeNull();
		expect(countComputingAgain(ledger)).toBe(0);
	});

	it('keeps its old result when the new one cannot be made, says so, and is tried again with other facts', async () => {
		const { ledger, wheelId, rideId } = await rideOnWheel();
		const state = (circumferenceM: number) =>
			ledger.database
				.prepare('UPDATE wheel SET circumference_m = ? WHERE id = ?')
				.run(circumferenceM, wheelId);
		state(2.2);
		const [derivation] = listDerivations(ledger);
		beginDerivation(ledger, derivation);
		failDerivation(ledger, derivation, 'the disk is full');
		expect(listDerivations(ledger)).toEqual([]);
		expect(rideStages(ledger, rideId)?.again).toEqual({ state: 'failed', reason: 'the disk is full' });
		expect(countComputingAgain(ledger)).toBe(0);
		expect(rideView(ledger, rideId)!.eventList).toHaveLength(2);
		state(2.3);
		expect(listDerivations(ledger)).toHaveLength(1);
		expect(rideStages(ledger, rideId)?.again).toEqual({ state: 'queued' });
	});

	it('is given up after attempts that ended the program, not after those that a stop broke off', async () => {
		const { ledger, wheelId } = await rideOnWheel();
		ledger.database.prepare('UPDATE wheel SET circumference_m = 2.2 WHERE id = ?').run(wheelId);
		const [derivation] = listDerivations(ledger);
		for (let stop = 0; stop < 2 * MOST_ATTEMPTS; stop++) {
			beginDerivation(ledger, derivation);
			releaseDerivation(ledger, derivation);
		}
		expect(listDerivations(ledger)).toHaveLength(1);
		for (let end = 0; end < MOST_ATTEMPTS; end++) beginDerivation(ledger, derivation);
		expect(listDerivations(ledger)).toEqual([]);
	});

	it('is replaced once more when its bike changes while it is computed', async () => {
		const { ledger, holder, wheelId } = await rideOnWheel();
		ledger.database.prepare('UPDATE wheel SET circumference_m = 2.2 WHERE id = ?').run(wheelId);
		const [derivation] = listDerivations(ledger);
		ledger.database.prepare('UPDATE wheel SET circumference_m = 2.1 WHERE id = ?').run(wheelId);
		saveDerivation(ledger, holder, derivation, toldOf(derivation.bike));
		expect(listDerivations(ledger)).toMatchObject([{ bike: { circumferenceM: 2.1 } }]);
	});

	it('is left alone while no bike is known: a ride before any bike was written down stays current', async () => {
		const test = freshLedger();
		await addRide(test, { startedAtMs: START_MS });
		expect(listDerivations(test.ledger)).toEqual([]);
	});
});
