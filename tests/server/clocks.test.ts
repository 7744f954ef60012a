import { describe, expect, it } from 'vitest';
import {
	correctRideClock,
	fitBuild,
	createBuild,
	createWheel,
	programmeRows,
	recordVerdict,
	rideStages,
	rideView,
	setSettings,
	wheelHistory
} from '$lib/server';
import { keepLease, newHolder, takeLease } from '$lib/server/queue/lease';
import { clockLooksWrong } from '$lib/ride/clockLooksWrong';
import { createFormats } from '$lib/ui/formats';
import { zonedInstant } from '$lib/ui/zonedInstant';
import { addRide, freshLedger, HOUR_MS, rowsOf, slipAt, START_MS, withHardware } from './testLedger';

const DAY_MS = 24 * HOUR_MS;
const iso = (ms: number) => new Date(ms).toISOString();

describe('clockLooksWrong', () => {
	it.each([
		[Date.UTC(1989, 11, 31), true],
		[Date.UTC(1970, 0, 1), true],
		[Date.UTC(2099, 5, 1), true],
		[NaN, true],
		[START_MS, false],
		// local time written as UTC, at most 14 hours ahead
		[START_MS + 14 * HOUR_MS, false],
		[START_MS + 3 * DAY_MS, true],
		[Date.UTC(2006, 5, 1), false]
	])('of a ride at %d, taken on 4 May 2026: %s', (startMs, expected) => {
		expect(clockLooksWrong(startMs, START_MS)).toBe(expected);
	});
});

describe('a ride of 1989 or 2099', () => {
	it.each([Date.UTC(1989, 11, 31, 1), Date.UTC(2099, 5, 1)])(
		'(%d) is taken and asked, and counts nowhere until it is answered',
		async (startedAtMs) => {
			const test = freshLedger();
			const { wheelId, buildId } = withHardware(test);
			await addRide(test);
			const before = programmeRows(test.ledger)[0];
			const rideId = await addRide(test, { startedAtMs, events: [slipAt(100)] }, { wheelId });
			expect(rideView(test.ledger, rideId)).toMatchObject({ state: 'needs an answer' });
			expect(rideView(test.ledger, rideId)!.needs[0]).toContain("recording's clock looks wrong");
			expect(rideStages(test.ledger, rideId)!.clock).toMatchObject({
				looksWrong: true,
				recordedAt: iso(startedAtMs)
			});
			expect(programmeRows(test.ledger)[0]).toMatchObject({ id: buildId, observedM: before.observedM });

			correctRideClock(test.ledger, test.actor, rideId, iso(START_MS + DAY_MS));
			expect(rideView(test.ledger, rideId)).toMatchObject({
				state: 'counted',
				startedAt: iso(START_MS + DAY_MS)
			});
			expect(rideStages(test.ledger, rideId)!.clock).toEqual({
				looksWrong: false,
				recordedAt: iso(startedAtMs),
				startedAt: iso(START_MS + DAY_MS)
			});
			expect(programmeRows(test.ledger)[0].observedM).toBeGreaterThan(before.observedM);
		}
	);
});

describe('correctRideClock', () => {
	it('takes verdicts along, says it in the trail, and can be taken back to what was recorded', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test, { events: [slipAt(100)] });
		const [event] = rideView(test.ledger, rideId)!.eventList;
		recordVerdict(test.ledger, test.actor, event.id, { verdict: 'confirmed', note: '' });
		const verdict = () =>
			rowsOf(test.ledger, 'SELECT start_ms - (SELECT started_ms FROM ride) AS s FROM verdict')[0];
		const offset = verdict();
		correctRideClock(test.ledger, test.actor, rideId, iso(START_MS + 5 * HOUR_MS));
		expect(verdict()).toEqual(offset);
		expect(rideView(test.ledger, rideId)!.eventList[0].verdict?.verdict).toBe('confirmed');
		correctRideClock(test.ledger, test.actor, rideId, null);
		expect(rowsOf(test.ledger, 'SELECT started_ms, recorded_start_ms FROM ride')).toEqual([
			{ started_ms: START_MS, recorded_start_ms: START_MS }
		]);
		expect(rowsOf(test.ledger, "SELECT count(*) AS n FROM trail WHERE action = 'corrected'")).toEqual([
			{ n: 2 }
		]);
	});

	it('refuses an instant that lies ahead, that is none, or of no ride', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test);
		const at =
			(start: string, id = rideId) =>
			() =>
				correctRideClock(test.ledger, test.actor, id, start);
		expect(at(iso(test.clock.ms + 2 * DAY_MS))).toThrow('after today');
		expect(at('1985-01-01T00:00Z')).toThrow('1990');
		expect(at('yesterday')).toThrow('no date');
		expect(at(iso(START_MS), 999)).toThrow('no such ride');
	});
});

describe("the ledger's own clock, set back", () => {
	it('loses and doubles nothing: rides stay in the order of their own time, trail entries in that of writing', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const first = await addRide(test);
		const taken = test.clock.ms;
		test.clock.ms -= 20 * DAY_MS;
		const second = await addRide(test, { startedAtMs: START_MS + DAY_MS });
		const ids = rowsOf(test.ledger, 'SELECT id FROM ride ORDER BY started_ms DESC').map(({ id }) => id);
		expect(ids).toEqual([second, first]);
		const trail = rowsOf(test.ledger, 'SELECT id, at_ms FROM trail ORDER BY id');
		expect(trail.at(-1)!.at_ms).toBe(test.clock.ms);
		expect(trail.some(({ at_ms }) => at_ms === taken)).toBe(true);
		expect(wheelHistory(test.ledger, wheelId)!.rides.map(({ rideId }) => rideId)).toEqual([first, second]);
	});

	it('does not keep a lease for ever that was taken by a clock ahead', () => {
		const test = freshLedger();
		test.clock.ms -= 40_000;
		expect(keepLease(test.ledger, 'runner', test.holder)).toBe(true);
		test.clock.ms -= 400 * DAY_MS;
		const other = newHolder();
		expect(takeLease(test.ledger, 'runner', other)).toBe(true);
		expect(keepLease(test.ledger, 'runner', test.holder)).toBe(false);
	});
});

describe('the nights in which the clocks change, and midnight', () => {
	const zone = 'Europe/Lisbon';
	// 2026-03-29 01:00 UTC forward, 2026-10-25 01:00 UTC back (IANA time zone database)
	const forward = Date.UTC(2026, 2, 29, 1);
	const back = Date.UTC(2026, 9, 25, 1);
	const formats = createFormats('en-GB', zone);

	it('file a ride under the day of its start in the workshop’s zone', () => {
		expect(formats.date(Date.UTC(2026, 4, 4, 22, 59))).toBe('4 May 2026');
		expect(formats.date(Date.UTC(2026, 4, 4, 23, 1))).toBe('5 May 2026');
		expect(formats.date(forward - 1)).toBe('29 Mar 2026');
		expect(formats.dateTime(forward - 60_000)).toContain('00:59');
		expect(formats.dateTime(forward)).toContain('02:00');
		expect(formats.dateTime(back - 60_000)).toContain('01:59');
		expect(formats.dateTime(back)).toContain('01:00');
	});

	it('give an instant for a wall clock that does not exist or comes twice', () => {
		const skipped = zonedInstant('2026-03-29T01:30', zone);
		const twice = zonedInstant('2026-10-25T01:30', zone);
		expect([forward - HOUR_MS / 2, forward + HOUR_MS / 2].map(iso)).toContain(skipped);
		expect([back - HOUR_MS / 2, back + HOUR_MS / 2].map(iso)).toContain(twice);
		expect(zonedInstant('2026-03-29T02:30', zone)).toBe(iso(forward + HOUR_MS / 2));
	});

	it.each([
		['forward', forward],
		['back', back]
	])(
		'%s: rides before, across and after keep their order, their length and their build',
		async (_way, nightMs) => {
			const test = freshLedger();
			test.clock.ms = nightMs + 100 * DAY_MS;
			setSettings(test.ledger, test.actor, { timeZone: zone });
			const wheelId = createWheel(test.ledger, test.actor, { name: 'Wheel A', hub: 'a hub' });
			const old = createBuild(test.ledger, test.actor, { name: 'Old', description: '', stepHubDeg: 15 });
			fitBuild(test.ledger, test.actor, { wheelId, buildId: old, from: iso(nightMs - DAY_MS) });
			const buildId = createBuild(test.ledger, test.actor, { name: 'New', description: '', stepHubDeg: 15 });
			const starts = [nightMs - 5 * HOUR_MS, nightMs - HOUR_MS / 2, nightMs + 2 * HOUR_MS];
			// fitted a minute after the ride across the change of the clock ended
			fitBuild(test.ledger, test.actor, { wheelId, buildId, from: iso(starts[1] + HOUR_MS + 60_000) });
			for (const startedAtMs of [starts[2], starts[0], starts[1]])
				await addRide(test, { startedAtMs }, { wheelId });
			const rides = rowsOf(test.ledger, 'SELECT id, started_ms, duration_s FROM ride ORDER BY started_ms');
			expect(rides.map(({ started_ms }) => started_ms)).toEqual(starts);
			expect(rides.map(({ duration_s }) => duration_s)).toEqual([3600, 3600, 3600]);
			expect(rides.map(({ id }) => rideView(test.ledger, Number(id))!.build?.name)).toEqual([
				'Old',
				'Old',
				'New'
			]);
			const distances = programmeRows(test.ledger).find(({ name }) => name === 'New')!;
			expect(distances.observedM).toBe(20_000);
		}
	);

	it('a ride across midnight is one ride, of the day on which it began', async () => {
		const test = freshLedger();
		withHardware(test);
		const startedAtMs = Date.UTC(2026, 4, 4, 22, 30);
		const rideId = await addRide(test, { startedAtMs, durationS: 7200 });
		expect(rideView(test.ledger, rideId)).toMatchObject({ state: 'counted', startedAt: iso(startedAtMs) });
		expect(formats.date(rideView(test.ledger, rideId)!.startedAt)).toBe('4 May 2026');
	});
});
