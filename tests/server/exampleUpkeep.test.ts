import { describe, expect, it } from 'vitest';
import {
	checkedOdometer,
	createBike,
	installExample,
	listBikes,
	removeExample,
	wheelStateAt
} from '$lib/server';
import { freshLedger, rowsOf } from './testLedger';

const TABLES = ['bike', 'wheel_on_bike', 'service', 'odometer_reading', 'unlogged_distance'];

describe('the example that ships', () => {
	it('brings bikes, tyres, services, counters and unrecorded distance, and takes them along when it goes', async () => {
		const test = freshLedger();
		createBike(test.ledger, test.actor, { name: 'touring bike 1' });
		await installExample(test.ledger, test.actor);
		for (const table of TABLES)
			expect(rowsOf(test.ledger, `SELECT 1 FROM ${table}`).length, table).toBeGreaterThanOrEqual(3);
		expect(listBikes(test.ledger).map(({ name, wheel }) => [name, wheel?.name ?? null])).toEqual([
			['touring bike 1', null],
			['Touring bike 1 (example)', 'Wheel 1'],
			['Touring bike 2', 'Wheel 2'],
			['Touring bike 3', 'Wheel 3']
		]);
		const [{ id }] = rowsOf(test.ledger, "SELECT id FROM wheel WHERE name = 'Wheel 1'");
		const state = wheelStateAt(test.ledger, Number(id), { atMs: Date.UTC(2026, 5, 1) })!;
		expect(state).toMatchObject({
			build: { name: 'Prototype 1' },
			bike: { name: 'Touring bike 1 (example)' }
		});
		expect(state.service).toMatchObject({ at: '2026-05-15T08:30:00.000Z', lubricant: 'thin freehub grease' });
		expect(checkedOdometer(test.ledger, Number(id))[0].verdict).toBe('first reading');
		expect(rowsOf(test.ledger, "SELECT tyre_etrto AS tyre FROM wheel WHERE name = 'Wheel 1'")).toEqual([
			{ tyre: '38-622' }
		]);

		removeExample(test.ledger, test.actor);
		// all dates of the example lie ahead of a clock that is far off: it is set up all the same
		test.clock.ms = Date.UTC(2020, 0, 1);
		await installExample(test.ledger, test.actor);
		removeExample(test.ledger, test.actor);
		expect(TABLES.map((table) => rowsOf(test.ledger, `SELECT 1 FROM ${table}`).length)).toEqual([
			1, 0, 0, 0, 0
		]);
	});
});
