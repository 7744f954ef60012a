import { describe, expect, it } from 'vitest';
import {
	comparison,
	fitBuild,
	createBuild,
	programmeRows,
	recordOdometer,
	recordService,
	recordUnloggedDistance,
	rideView,
	updateWheel,
	wheelView,
	withdrawRow
} from '$lib/server';
import { buildDistances, axisOfWheel, sumOf } from '$lib/server/hardware/distances';
import { evidenceKey } from '$lib/server/ledger/remember';
import { addRide, freshLedger, HOUR_MS, rowsOf, slipAt, START_MS, withHardware } from './testLedger';

const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();

describe('unlogged distance', () => {
	it('counts for the age of the hardware and is never observed', async () => {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		await addRide(test, { totalM: 10_000, observedM: 8000 });
		const later = await addRide(test, { startedAtMs: START_MS + 48 * HOUR_MS, events: [slipAt(100)] });
		const before = { rows: programmeRows(test.ledger), line: comparison(test.ledger, [buildId]).lines[0] };
		expect(rideView(test.ledger, later)!.eventList[0].buildDistanceM).toBe(10_800);

		recordUnloggedDistance(test.ledger, test.actor, wheelId, { at: at(24), distanceM: 55_500 });
		// what statistics count has not moved: neither distance nor observed distance of the rates
		expect(programmeRows(test.ledger)).toEqual(before.rows);
		const [line] = comparison(test.ledger, [buildId]).lines;
		const observedM = (stretches: { fromM: number; toM: number }[]) =>
			stretches.reduce((sum, { fromM, toM }) => sum + toM - fromM, 0);
		expect(observedM(line.observed)).toBe(observedM(before.line.observed));
		// but all that comes after it is older
		expect(line.endM).toBe(before.line.endM + 55_500);
		expect(rideView(test.ledger, later)!.eventList[0].buildDistanceM).toBe(66_300);
		expect(buildDistances(test.ledger)).toEqual([
			{ buildId, wheelId, recordedM: 40_000, unloggedM: 55_500, totalM: 95_500 }
		]);
	});

	it('belongs to the build that was on the wheel until its instant, and goes along when periods are corrected', () => {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		recordUnloggedDistance(test.ledger, test.actor, wheelId, { at: at(20), distanceM: 7000 });
		const next = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
		fitBuild(test.ledger, test.actor, { wheelId, buildId: next, from: at(20) });
		expect(buildDistances(test.ledger).map((one) => one.buildId)).toEqual([buildId]);
		recordUnloggedDistance(test.ledger, test.actor, wheelId, { at: at(21), distanceM: 500 });
		expect(buildDistances(test.ledger).map(({ totalM }) => totalM)).toEqual([7000, 500]);
	});

	it('is taken back with a reason and stays readable', () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const id = recordUnloggedDistance(test.ledger, test.actor, wheelId, { at: at(20), distanceM: 7000 });
		const key = evidenceKey(test.ledger);
		withdrawRow(test.ledger, test.actor, 'unlogged_distance', { id, wheelId }, 'the other wheel');
		expect(evidenceKey(test.ledger)).toBeGreaterThan(key);
		expect(sumOf(axisOfWheel(test.ledger, wheelId)).totalM).toBe(0);
		expect(rowsOf(test.ledger, 'SELECT distance_m, withdrawn_reason FROM unlogged_distance')).toEqual([
			{ distance_m: 7000, withdrawn_reason: 'the other wheel' }
		]);
		const again = () => withdrawRow(test.ledger, test.actor, 'unlogged_distance', { id, wheelId }, 'again');
		expect(again).toThrow(expect.objectContaining({ code: 'not-found' }));
	});
});

describe('what is written down of a wheel', () => {
	it('refuses what is absurd, before the wheel existed or still to come, and keeps nothing of it', () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const { rowVersion } = wheelView(test.ledger, wheelId)!.facts;
		updateWheel(
			test.ledger,
			test.actor,
			wheelId,
			{ name: 'Wheel A', hub: 'a hub', existsFrom: at(-20) },
			rowVersion
		);
		const wrong = [
			() => recordUnloggedDistance(test.ledger, test.actor, wheelId, { at: at(1), distanceM: -5 }),
			() => recordUnloggedDistance(test.ledger, test.actor, wheelId, { at: at(1), distanceM: NaN }),
			() => recordUnloggedDistance(test.ledger, test.actor, wheelId, { at: at(1), distanceM: null }),
			() => recordUnloggedDistance(test.ledger, test.actor, wheelId, { at: at(-21), distanceM: 5 }),
			() => recordUnloggedDistance(test.ledger, test.actor, wheelId, { at: at(1e4), distanceM: 5 }),
			() => recordOdometer(test.ledger, test.actor, wheelId, { at: at(1), readingM: -1 }),
			() => recordService(test.ledger, test.actor, wheelId, { at: at(1), opened: false, cleaned: false }),
			() =>
				recordService(test.ledger, test.actor, wheelId, {
					at: at(1),
					opened: true,
					cleaned: true,
					amountG: 3
				}),
			() => fitBuild(test.ledger, test.actor, { wheelId, buildId: 1, from: at(-30), until: at(-25) })
		];
		for (const one of wrong) expect(one).toThrow(expect.objectContaining({ code: 'wrong-value' }));
		for (const table of ['service', 'odometer_reading', 'unlogged_distance'])
			expect(rowsOf(test.ledger, `SELECT 1 FROM ${table}`)).toEqual([]);
		expect(rowsOf(test.ledger, 'SELECT 1 FROM fitted_period')).toHaveLength(1);
	});

	it('is not overwritten by the second of two people, who is told whose change stands', () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const { rowVersion } = wheelView(test.ledger, wheelId)!.facts;
		const input = { name: 'Wheel A', hub: 'a hub', tyreEtrto: ' 40 - 622 ', overLocknutMm: 142 };
		updateWheel(test.ledger, test.actor, wheelId, input, rowVersion);
		expect(wheelView(test.ledger, wheelId)!.facts).toMatchObject({ tyreEtrto: '40-622', overLocknutMm: 142 });
		const second = () =>
			updateWheel(test.ledger, test.actor, wheelId, { ...input, overLocknutMm: 135 }, rowVersion);
		expect(second).toThrow('P1');
		expect(wheelView(test.ledger, wheelId)!.facts.overLocknutMm).toBe(142);
		const [{ detail }] = rowsOf(test.ledger, "SELECT detail FROM trail WHERE action = 'corrected'");
		expect(JSON.parse(String(detail))).toEqual({
			overLocknutMm: { before: null, after: 142 },
			tyreEtrto: { before: null, after: '40-622' }
		});
	});

	it('refuses lengths, tyres and teeth that no wheel has, and a first day after something was fitted', () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		for (const wrong of [
			{ overLocknutMm: 1420 },
			{ rimOffsetWantedMm: -80 },
			{ tyreEtrto: '700x40C' },
			{ cassette: [11, 13.5] },
			{ cassette: [11, 900] },
			{ circumferenceM: 21.9 },
			{ existsFrom: at(0) },
			{ existsFrom: at(99_999) }
		])
			expect(() =>
				updateWheel(test.ledger, test.actor, wheelId, { name: 'Wheel A', hub: '', ...wrong }, 1)
			).toThrow(expect.objectContaining({ code: 'wrong-value' }));
		expect(wheelView(test.ledger, wheelId)!.facts.rowVersion).toBe(1);
	});
});

describe('a withdrawn fitted period', () => {
	it('stays in the ledger with its reason and gives its time free', async () => {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		const { withdrawFittedPeriod } = await import('$lib/server');
		const [{ id }] = wheelView(test.ledger, wheelId)!.periods;
		withdrawFittedPeriod(test.ledger, test.actor, id, 'it was the other wheel');
		expect(wheelView(test.ledger, wheelId)!.periods).toEqual([]);
		fitBuild(test.ledger, test.actor, { wheelId, buildId, from: at(-12) });
		expect(rowsOf(test.ledger, 'SELECT withdrawn_reason FROM fitted_period ORDER BY id')).toEqual([
			{ withdrawn_reason: 'it was the other wheel' },
			{ withdrawn_reason: null }
		]);
	});

	it('is not mended by the second of two people who have not seen what the first did', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const { correctFittedPeriod, withdrawFittedPeriod } = await import('$lib/server');
		const [{ id, version }] = wheelView(test.ledger, wheelId)!.periods;
		correctFittedPeriod(test.ledger, test.actor, id, { from: at(-8) }, version);
		for (const second of [
			() => correctFittedPeriod(test.ledger, test.actor, id, { from: at(-9) }, version),
			() => withdrawFittedPeriod(test.ledger, test.actor, id, 'another wheel', version)
		])
			expect(second).toThrow(expect.objectContaining({ code: 'conflict' }));
		const [now] = wheelView(test.ledger, wheelId)!.periods;
		expect(now.from).toBe(at(-8));
		correctFittedPeriod(test.ledger, test.actor, id, { from: at(-9) }, now.version);
		expect(wheelView(test.ledger, wheelId)!.periods[0].from).toBe(at(-9));
	});
});
