import { describe, expect, it } from 'vitest';
import {
	assignRide,
	createBuild,
	createWheel,
	endFittedPeriod,
	fitBuild,
	partDistances,
	recordOdometer,
	checkedOdometer,
	recordService,
	recordUnloggedDistance,
	wheelHistory,
	wheelStateAt,
	withdrawRow,
	type Ledger
} from '$lib/server';
import { addRide, freshLedger, HOUR_MS, rowsOf, slipAt, START_MS, withHardware } from './testLedger';

const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();

function putPart(ledger: Ledger, buildId: number, number: string, serial: string): number {
	const known = ledger.database
		.prepare<[string], { id: number }>('SELECT id FROM part WHERE number = ?')
		.get(number);
	const partId =
		known?.id ??
		Number(
			ledger.database
				.prepare("INSERT INTO part (number, name, kind, created_ms) VALUES (?, ?, 'ratchet ring', 0)")
				.run(number, `ring ${number}`).lastInsertRowid
		);
	const [{ next }] = rowsOf(
		ledger,
		`SELECT count(*) + 1 AS next FROM build_part WHERE build_id = ${buildId}`
	);
	ledger.database
		.prepare('INSERT INTO build_part (build_id, position, part_id, quantity, serial) VALUES (?, ?, ?, 1, ?)')
		.run(buildId, next, partId, serial);
	return partId;
}

describe('wheelHistory', () => {
	it('lays builds, gaps, services, rides, unlogged distance and slips on the distance of the wheel', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const { wheelId } = withHardware(test);
		const next = createBuild(ledger, actor, { name: 'New', description: '' });
		await addRide(test, {
			totalM: 10_000,
			observedM: 4000,
			events: [slipAt(500), slipAt(600, { observed: false })]
		});
		recordUnloggedDistance(ledger, actor, wheelId, { at: at(10), distanceM: 5000, note: 'errands' });
		recordService(ledger, actor, wheelId, { at: at(12), opened: true, cleaned: true });
		const [{ id }] = rowsOf(ledger, 'SELECT id FROM fitted_period');
		ledger.database
			.prepare('UPDATE fitted_period SET until_ms = ? WHERE id = ?')
			.run(START_MS + 13 * HOUR_MS, id);
		fitBuild(ledger, actor, { wheelId, buildId: next, from: at(20) });
		await addRide(test, { startedAtMs: START_MS + 15 * HOUR_MS, totalM: 2000, observedM: 1000 }, { wheelId });
		await addRide(test, { startedAtMs: START_MS + 30 * HOUR_MS, totalM: 8000, motorAssisted: true });

		const history = wheelHistory(ledger, wheelId);
		expect(history).toMatchObject({
			totalM: 25_000,
			recordedM: 20_000,
			unloggedM: 5000,
			withoutBuildM: 2000
		});
		expect(history.builds.map(({ build, fromM, toM }) => [build.name, fromM, toM])).toEqual([
			['Old', 0, 15_000],
			['New', 17_000, 25_000]
		]);
		expect(history.gaps).toMatchObject([{ fromM: 15_000, toM: 17_000, from: at(13), until: at(20) }]);
		expect(history.services).toMatchObject([{ atM: 15_000, toM: 25_000, byCode: 'P1' }]);
		// the second counts nowhere until a build is named, the third was helped by a motor
		expect(history.rides.map(({ fromM, observedM, counted }) => [fromM, observedM, counted])).toEqual([
			[0, 4000, true],
			[15_000, 0, false],
			[17_000, 0, false]
		]);
		expect(history.unlogged).toMatchObject([{ fromM: 10_000, toM: 15_000, note: 'errands' }]);
		expect(history.slips).toMatchObject([{ atM: 4000, confirmed: false }]);
	});

	it('moves nothing for a trainer ride, a withdrawn service or another wheel', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const { wheelId } = withHardware(test);
		const rideId = await addRide(test, { trainer: true });
		const id = recordService(ledger, actor, wheelId, { at: at(12), opened: true, cleaned: false });
		withdrawRow(ledger, actor, 'service', { id, wheelId }, 'by mistake');
		expect(wheelHistory(ledger, wheelId)).toMatchObject({ totalM: 0, services: [], rides: [] });
		assignRide(ledger, actor, rideId, { trainer: false });
		expect(wheelHistory(ledger, wheelId).totalM).toBe(30_000);
		const other = createWheel(ledger, actor, { name: 'B', hub: '' });
		assignRide(ledger, actor, rideId, { wheelId: other });
		expect(wheelHistory(ledger, wheelId).totalM).toBe(0);
	});
});

describe('wheelStateAt', () => {
	it('tells build, parts, service and distance of any place or instant', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const { wheelId, buildId } = withHardware(test);
		putPart(ledger, buildId, 'R-1', 'S7');
		await addRide(test, { totalM: 10_000 });
		recordService(ledger, actor, wheelId, {
			at: at(12),
			opened: true,
			cleaned: true,
			lubricant: 'oil',
			amountG: 2
		});
		await addRide(test, { startedAtMs: START_MS + 24 * HOUR_MS, totalM: 30_000 });

		expect(wheelStateAt(ledger, wheelId, { atM: 5000 })).toMatchObject({
			at: at(0.5),
			build: { id: buildId, sinceM: 5000 },
			parts: [{ number: 'R-1', serial: 'S7' }],
			service: null
		});
		expect(wheelStateAt(ledger, wheelId, { atM: 25_000 })).toMatchObject({
			at: at(24.5),
			atM: 25_000,
			service: { lubricant: 'oil', amountG: 2, sinceM: 15_000 }
		});
		expect(wheelStateAt(ledger, wheelId, { atMs: START_MS - 20 * HOUR_MS })).toMatchObject({
			atM: 0,
			build: null,
			parts: []
		});
		const unridden = createWheel(ledger, actor, { name: 'B', hub: '' });
		expect(wheelStateAt(ledger, unridden, { atM: 5 })).toBeNull();
		expect(wheelStateAt(ledger, unridden, { atMs: START_MS })).toMatchObject({ atM: 0, build: null });
	});
});

describe('partDistances', () => {
	it('follows a piece with a serial over builds and wheels, and leaves pieces without one apart', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const { wheelId, buildId } = withHardware(test);
		const next = createBuild(ledger, actor, { name: 'New', description: '' });
		const other = createWheel(ledger, actor, { name: 'Wheel B', hub: '' });
		for (const build of [buildId, next]) {
			putPart(ledger, build, 'R-1', build === buildId ? 's7' : 'S7');
			putPart(ledger, build, 'SP-1', '');
		}
		const [{ id }] = rowsOf(ledger, 'SELECT id FROM fitted_period');
		endFittedPeriod(ledger, actor, Number(id), at(30));
		fitBuild(ledger, actor, { wheelId: other, buildId: next, from: at(40) });
		await addRide(test, { totalM: 10_000 }, { wheelId });
		recordUnloggedDistance(ledger, actor, other, { at: at(60), distanceM: 500 });
		await addRide(test, { startedAtMs: START_MS + 48 * HOUR_MS, totalM: 4000 }, { wheelId: other });
		expect(partDistances(ledger)).toMatchObject([
			{
				serial: 's7',
				recordedM: 14_000,
				unloggedM: 500,
				totalM: 14_500,
				builds: [
					{ buildId, wheel: 'Wheel A', totalM: 10_000 },
					{ buildId: next, wheel: 'Wheel B', totalM: 4500 }
				]
			},
			{ serial: '', totalM: 10_000 },
			{ serial: '', totalM: 4500 }
		]);
	});
});

describe('odometer readings', () => {
	it('check the distance and drive nothing', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const { wheelId } = withHardware(test);
		recordOdometer(ledger, actor, wheelId, { at: at(-1), readingM: 1_000_000 });
		await addRide(test, { totalM: 30_000 });
		recordOdometer(ledger, actor, wheelId, { at: at(5), readingM: 1_080_000, note: 'after a long week' });
		const [, second] = checkedOdometer(ledger, wheelId);
		expect(second).toMatchObject({ verdict: 'more than the ledger', note: 'after a long week' });
		expect(second.since).toMatchObject({ countedM: 80_000, ledgerM: 30_000, differenceM: 50_000 });
		expect(wheelHistory(ledger, wheelId).totalM).toBe(30_000);
		recordUnloggedDistance(ledger, actor, wheelId, { at: at(4), distanceM: 50_000 });
		expect(checkedOdometer(ledger, wheelId)[1].verdict).toBe('agrees');
	});
});
