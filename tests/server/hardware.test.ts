import { describe, expect, it } from 'vitest';
import {
	assignRide,
	buildView,
	correctFittedPeriod,
	createBuild,
	createWheel,
	endFittedPeriod,
	fitBuild,
	listRides,
	listWheels,
	rideView,
	setSettings,
	wheelView,
	withdrawFittedPeriod
} from '$lib/server';
import { addRide, freshLedger, HOUR_MS, rowsOf, START_MS, withHardware } from './testLedger';

const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();

describe('fitBuild', () => {
	it('takes the build that is on the wheel off at the same instant', () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const next = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
		fitBuild(test.ledger, test.actor, { wheelId, buildId: next, from: at(5) });
		expect(wheelView(test.ledger, wheelId)!.periods).toMatchObject([
			{ build: { name: 'New' }, from: at(5), until: null },
			{ build: { name: 'Old' }, from: at(-10), until: at(5) }
		]);
		expect(listWheels(test.ledger)[0].currentBuild?.name).toBe('New');
	});

	it('refuses a period that would lie over another, and changes nothing', () => {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		fitBuild(test.ledger, test.actor, { wheelId, buildId, from: at(5) });
		const before = rowsOf(test.ledger, 'SELECT * FROM fitted_period');
		for (const wrong of [
			{ from: at(-20), until: at(-5) },
			{ from: at(0), until: at(1) },
			{ from: at(2) },
			{ from: at(-20) }
		])
			expect(() => fitBuild(test.ledger, test.actor, { wheelId, buildId, ...wrong })).toThrow(
				expect.objectContaining({ code: 'overlap' })
			);
		expect(rowsOf(test.ledger, 'SELECT * FROM fitted_period')).toEqual(before);
	});

	it('takes a closed period before all others, and one in a gap', () => {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		fitBuild(test.ledger, test.actor, { wheelId, buildId, from: at(-40), until: at(-30) });
		fitBuild(test.ledger, test.actor, { wheelId, buildId, from: at(-25), until: at(-20) });
		expect(wheelView(test.ledger, wheelId)!.periods).toHaveLength(3);
	});

	it('refuses instants without a zone, in the wrong order or far off', () => {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		for (const wrong of [
			{ from: '2026-05-04T08:00' },
			{ from: 'tomorrow' },
			{ from: at(30), until: at(29) },
			{ from: '1875-01-01T00:00:00Z' }
		])
			expect(() => fitBuild(test.ledger, test.actor, { wheelId, buildId, ...wrong })).toThrow(
				expect.objectContaining({ code: 'wrong-value' })
			);
	});

	it("says in the workshop's own time what stands in the way", () => {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		setSettings(test.ledger, test.actor, { timeZone: 'Asia/Tokyo' });
		expect(() =>
			fitBuild(test.ledger, test.actor, { wheelId, buildId, from: '2026-05-03T20:00:00Z', until: at(0) })
		).toThrow('On Wheel A the build "Old" was fitted from 4 May 2026, 07:00 (Asia/Tokyo) and still is');
	});

	it('is also guarded by the database itself', () => {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		expect(() =>
			test.ledger.database
				.prepare(
					'INSERT INTO fitted_period (wheel_id, build_id, from_ms, until_ms, created_ms) VALUES (?, ?, ?, ?, 0)'
				)
				.run(wheelId, buildId, START_MS, START_MS + 1)
		).toThrow('overlap');
	});
});

describe('endFittedPeriod', () => {
	it('takes a build off, once, and not before it was fitted', () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const [{ id }] = wheelView(test.ledger, wheelId)!.periods;
		expect(() => endFittedPeriod(test.ledger, test.actor, id, at(-11))).toThrow('later');
		endFittedPeriod(test.ledger, test.actor, id, at(3));
		expect(wheelView(test.ledger, wheelId)!.currentBuild).toBeNull();
		expect(() => endFittedPeriod(test.ledger, test.actor, id, at(4))).toThrow(
			expect.objectContaining({ code: 'conflict' })
		);
	});
});

describe('a mistyped fitted period', () => {
	/** Old from -10 h, New from +5 h, and a ride at 0 to 1 h. */
	async function mistaken() {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		const newId = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
		const periodId = fitBuild(test.ledger, test.actor, { wheelId, buildId: newId, from: at(5) });
		const rideId = await addRide(test);
		const periods = () =>
			wheelView(test.ledger, wheelId)!.periods.map(({ build, from, until }) => [build.name, from, until]);
		return { ...test, wheelId, buildId, newId, periodId, rideId, periods };
	}
	const trail = (ledger: Parameters<typeof rowsOf>[0], action: string) =>
		rowsOf(ledger, `SELECT subject_id, detail FROM trail WHERE action = '${action}' ORDER BY id`).map(
			({ subject_id, detail }) => [Number(subject_id), JSON.parse(String(detail)) as object]
		);

	it('is refused when it lies ahead, with the time that it is now', async () => {
		const { ledger, actor, wheelId, newId, periods } = await mistaken();
		const before = periods();
		const ahead = { wheelId, buildId: newId, from: '2031-01-01T08:00:00Z' };
		expect(() => fitBuild(ledger, actor, ahead)).toThrow(
			/^1 January 2031, 08:00 \(.+\) has not come yet: it is \d+ \w+ 2026, .+ now\./
		);
		expect(() => fitBuild(ledger, actor, { ...ahead, from: at(9), until: ahead.from })).toThrow('not come');
		expect(periods()).toEqual(before);
	});

	it('is corrected together with the one that came off for it, and rides find their build anew', async () => {
		const { ledger, actor, periodId, rideId, periods, buildId, newId } = await mistaken();
		expect(rideView(ledger, rideId)!.build?.id).toBe(buildId);
		correctFittedPeriod(ledger, actor, periodId, { from: at(-1) });
		expect(periods()).toEqual([
			['New', at(-1), null],
			['Old', at(-10), at(-1)]
		]);
		expect(rideView(ledger, rideId)!.build?.id).toBe(newId);
		correctFittedPeriod(ledger, actor, periodId, { from: at(7), until: at(9) });
		expect(periods()).toEqual([
			['New', at(7), at(9)],
			['Old', at(-10), at(7)]
		]);
		expect(rideView(ledger, rideId)!.build?.id).toBe(buildId);
		expect(trail(ledger, 'corrected').at(-2)).toEqual([
			periodId,
			{ before: { from: at(-1), until: null }, after: { from: at(7), until: at(9) } }
		]);
	});

	it('that was accepted before with a start far ahead is mended the same way', async () => {
		const { ledger, actor, wheelId, buildId, newId, periodId, periods } = await mistaken();
		withdrawFittedPeriod(ledger, actor, periodId, 'once more');
		const ahead = '2031-01-01T08:00:00.000Z';
		const late = fitBuild(ledger, actor, { wheelId, buildId: newId, from: ahead }, { example: true });
		expect(() => fitBuild(ledger, actor, { wheelId, buildId, from: at(3) })).toThrow('one build at a time');
		correctFittedPeriod(ledger, actor, late, { from: at(3) });
		expect(periods()).toEqual([
			['New', at(3), null],
			['Old', at(-10), at(3)]
		]);
	});

	it('is not corrected over another one, backwards or into the future, and nothing changes', async () => {
		const { ledger, actor, periodId, periods } = await mistaken();
		const before = periods();
		const [, old] = rowsOf(ledger, 'SELECT id FROM fitted_period ORDER BY id DESC');
		const correct = (id: number, input: object) => () => correctFittedPeriod(ledger, actor, id, input);
		expect(correct(periodId, { from: at(-10) })).toThrow(expect.objectContaining({ code: 'overlap' }));
		expect(correct(periodId, { from: at(-20) })).toThrow(expect.objectContaining({ code: 'overlap' }));
		expect(correct(Number(old.id), { until: at(6) })).toThrow(expect.objectContaining({ code: 'overlap' }));
		expect(correct(Number(old.id), { until: null })).toThrow(expect.objectContaining({ code: 'overlap' }));
		expect(correct(periodId, { until: at(4) })).toThrow('later');
		expect(correct(periodId, { from: at(5000) })).toThrow('not come yet');
		expect(correct(99, { from: at(1) })).toThrow('no such fitted period');
		expect(periods()).toEqual(before);
		expect(trail(ledger, 'corrected')).toEqual([]);
	});

	it('is withdrawn with a reason; what it said stays in the trail, and the build before is on again', async () => {
		const { ledger, actor, wheelId, newId, periodId, periods } = await mistaken();
		expect(() => withdrawFittedPeriod(ledger, actor, periodId, ' ')).toThrow('reason');
		withdrawFittedPeriod(ledger, actor, periodId, 'it was the other wheel');
		expect(periods()).toEqual([['Old', at(-10), null]]);
		expect(trail(ledger, 'withdrew')).toEqual([
			[
				periodId,
				{
					reason: 'it was the other wheel',
					before: { wheelId, buildId: newId, from: at(5), until: null }
				}
			]
		]);
		expect(() => withdrawFittedPeriod(ledger, actor, periodId, 'again')).toThrow('no such');
	});

	it('leaves its rides to be asked about when no other build was on the wheel', async () => {
		const { ledger, actor, periodId, rideId, periods } = await mistaken();
		correctFittedPeriod(ledger, actor, periodId, { until: at(8) });
		const [old] = rowsOf(ledger, 'SELECT id FROM fitted_period ORDER BY from_ms');
		withdrawFittedPeriod(ledger, actor, Number(old.id), 'never on this wheel');
		expect(periods()).toEqual([['New', at(5), at(8)]]);
		expect(rideView(ledger, rideId)).toMatchObject({ build: null, state: 'needs an answer' });
	});
});

describe('wheels and builds', () => {
	it('have names that are unique whatever their case, and values within reason', () => {
		const { ledger, actor } = freshLedger();
		createWheel(ledger, actor, { name: 'W 1', hub: '' });
		expect(() => createWheel(ledger, actor, { name: ' w  1 ', hub: '' })).toThrow('named "w 1" already');
		expect(() => createWheel(ledger, actor, { name: ' ', hub: '' })).toThrow('name is missing');
		expect(() => createWheel(ledger, actor, { name: 'X', hub: '', circumferenceM: 21 })).toThrow('metres');
		expect(() => createBuild(ledger, actor, { name: 'B', description: '', stepHubDeg: 0 })).toThrow('step');
		expect(rowsOf(ledger, 'SELECT name FROM wheel')).toEqual([{ name: 'W 1' }]);
	});

	it('know their rides and their distance by wheel and time', async () => {
		const test = freshLedger();
		const { wheelId, buildId } = withHardware(test);
		const next = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
		await addRide(test, { startedAtMs: START_MS, totalM: 10_000 });
		await addRide(test, { startedAtMs: START_MS + 24 * HOUR_MS, totalM: 7_000 });
		fitBuild(test.ledger, test.actor, { wheelId, buildId: next, from: at(12) });
		expect(wheelView(test.ledger, wheelId)).toMatchObject({
			totalM: 17_000,
			periods: [
				{ build: { id: next }, totalM: 7_000, rides: 1 },
				{ build: { id: buildId }, totalM: 10_000, rides: 1 }
			]
		});
		expect(buildView(test.ledger, next)).toMatchObject({
			rides: 1,
			totalM: 7_000,
			wheels: [{ id: wheelId }]
		});
		expect(buildView(test.ledger, 99)).toBeNull();
		expect(wheelView(test.ledger, 99)).toBeNull();
	});
});

describe('the wheel of a ride', () => {
	it('is the only wheel there is, also for rides that came before it', async () => {
		const test = freshLedger();
		const early = await addRide(test);
		expect(rideView(test.ledger, early)!.needs).toEqual(['Which wheel was ridden?']);
		const { wheelId } = withHardware(test);
		const late = await addRide(test, { startedAtMs: START_MS + HOUR_MS });
		for (const id of [early, late]) expect(rideView(test.ledger, id)!.wheel?.id).toBe(wheelId);
	});

	it('is asked for when there are two', async () => {
		const test = freshLedger();
		withHardware(test);
		createWheel(test.ledger, test.actor, { name: 'Wheel B', hub: '' });
		const rideId = await addRide(test);
		expect(rideView(test.ledger, rideId)).toMatchObject({
			wheel: null,
			state: 'needs an answer',
			needs: ['Which wheel was ridden?']
		});
	});

	it('finds its build anew when it is corrected', async () => {
		const test = freshLedger();
		const { buildId } = withHardware(test);
		const other = createWheel(test.ledger, test.actor, { name: 'Wheel B', hub: '' });
		const otherBuild = createBuild(test.ledger, test.actor, { name: 'Other', description: '' });
		fitBuild(test.ledger, test.actor, { wheelId: other, buildId: otherBuild, from: at(-10) });
		const rideId = await addRide(test, {}, { wheelId: 1 });
		expect(rideView(test.ledger, rideId)!.build?.id).toBe(buildId);
		assignRide(test.ledger, test.actor, rideId, { wheelId: other });
		expect(rideView(test.ledger, rideId)!.build?.id).toBe(otherBuild);
		expect(listRides(test.ledger, { page: 1, pageSize: 10, wheelId: other }).total).toBe(1);
	});
});
