import { describe, expect, it } from 'vitest';
import {
	assignRide,
	buildView,
	comparison,
	correctFittedPeriod,
	createBuild,
	fitBuild,
	joinRide,
	listRides,
	programmeRows,
	rideView,
	splitRide,
	wheelView
} from '$lib/server';
import { saveDerivation } from '$lib/server/queue/derivations';
import { removeChannels } from '$lib/server/queue/saveChannels';
import { DRIVE_STATES } from '$lib/slip/analysis';
import { packChannel } from '../../src/jobs/analysis/packChannel';
import {
	addRide,
	analysedFile,
	freshLedger,
	HOUR_MS,
	rowsOf,
	slipAt,
	START_MS,
	withHardware,
	type TestLedger
} from './testLedger';

const instant = (ms: number) => new Date(ms).toISOString();
const SECONDS = 3601;
/** one hour: 30 km at an even speed, under drive in the first 50 minutes, observed in the first 40 */
const channels = [
	packChannel(
		'distanceM',
		Float64Array.from({ length: SECONDS }, (_, s) => (s * 30_000) / 3600),
		0.1
	),
	packChannel(
		'state',
		Float64Array.from({ length: SECONDS }, (_, s) => DRIVE_STATES.indexOf(s < 3000 ? 'driving' : 'coasting')),
		1
	)
];
const events = [slipAt(600, { atM: 5_000 }), slipAt(2100, { atM: 17_500 }), slipAt(2220, { atM: 18_500 })];

/** A ride during which the build was changed after half an hour. */
async function acrossAChange() {
	const test = freshLedger();
	const { wheelId, buildId } = withHardware(test);
	const next = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
	const rideId = await addRide(test, { events, channels });
	const from = instant(START_MS + HOUR_MS / 2);
	const periodId = fitBuild(test.ledger, test.actor, { wheelId, buildId: next, from });
	return { test, wheelId, buildId, next, rideId, periodId };
}

const sums = ({ ledger }: TestLedger) =>
	programmeRows(ledger).map(({ rides, totalM, observedM, drivenM, counted }) => ({
		rides,
		totalM: Math.round(totalM),
		observedM: Math.round(observedM),
		drivenM: Math.round(drivenM),
		slips: counted.worstCase.count
	}));
const none = { rides: 0, totalM: 0, observedM: 0, drivenM: 0, slips: 0 };
const halves = [
	{ rides: 1, totalM: 15_000, observedM: 15_000, drivenM: 15_000, slips: 1 },
	{ rides: 1, totalM: 15_000, observedM: 5_000, drivenM: 10_000, slips: 2 }
];

describe('splitRide', () => {
	it('gives each part to its build by time, and the halves add up to the whole', async () => {
		const { test, rideId } = await acrossAChange();
		expect(sums(test)).toEqual([none, none]);
		splitRide(test.ledger, test.actor, rideId);
		expect(sums(test)).toEqual(halves);
		const ride = rideView(test.ledger, rideId)!;
		expect(ride).toMatchObject({ state: 'counted', needs: [], build: null });
		expect(halves[0].totalM + halves[1].totalM).toBe(ride.totalM);
		expect(halves[0].observedM + halves[1].observedM).toBe(ride.observedM);
		expect(halves[0].drivenM + halves[1].drivenM).toBe(ride.drivenM);
	});

	it('counts the age of an event from the fitting of its own build', async () => {
		const { test, rideId, buildId, next } = await acrossAChange();
		splitRide(test.ledger, test.actor, rideId);
		const ages = rideView(test.ledger, rideId)!.eventList.map((event) => event.buildDistanceM);
		expect(ages.map((age) => Math.round(age!))).toEqual([5_000, 2_500, 3_500]);
		const { lines } = comparison(test.ledger, [buildId, next]);
		expect(
			lines.map(({ endM, slips }) => [Math.round(endM), slips.map(({ atM }) => Math.round(atM))])
		).toEqual([
			[15_000, [5_000]],
			[15_000, [2_500, 3_500]]
		]);
		expect(lines[1].observed.map(({ fromM, toM }) => [Math.round(fromM), Math.round(toM)])).toEqual([
			[0, 5_000]
		]);
	});

	it('shows the ride once with each of its builds and in both fitted periods', async () => {
		const { test, rideId, wheelId, buildId, next } = await acrossAChange();
		splitRide(test.ledger, test.actor, rideId);
		for (const id of [buildId, next]) {
			expect(listRides(test.ledger, { pageSize: 50, buildId: id }).rows.map((ride) => ride.id)).toEqual([
				rideId
			]);
			expect(buildView(test.ledger, id)!.periods[0]).toMatchObject({ rides: 1 });
			expect(listRides(test.ledger, { page: 1, pageSize: 9, buildId: id }).total).toBe(1);
		}
		const wheel = wheelView(test.ledger, wheelId)!;
		expect(wheel.totalM).toBe(30_000);
		expect(wheel.periods.map(({ rides }) => rides)).toEqual([1, 1]);
	});

	it('leaves a part out during which nothing was fitted', async () => {
		const test = freshLedger();
		const { wheelId } = withHardware(test);
		const rideId = await addRide(test, { events, channels });
		test.ledger.database
			.prepare('UPDATE fitted_period SET until_ms = ? WHERE wheel_id = ?')
			.run(START_MS + HOUR_MS / 2, wheelId);
		expect(rideView(test.ledger, rideId)!.state).toBe('needs an answer');
		splitRide(test.ledger, test.actor, rideId);
		expect(sums(test)).toEqual([halves[0]]);
	});

	it('asks again when the fitted periods are corrected, and follows when it is split again', async () => {
		const { test, rideId, periodId } = await acrossAChange();
		splitRide(test.ledger, test.actor, rideId);
		correctFittedPeriod(test.ledger, test.actor, periodId, {
			from: instant(START_MS + (2 / 3) * HOUR_MS),
			reason: 'written down wrongly'
		} as Parameters<typeof correctFittedPeriod>[3]);
		expect(sums(test)).toEqual([none, none]);
		expect(rideView(test.ledger, rideId)!.needs).toEqual([expect.stringContaining('split it again')]);
		splitRide(test.ledger, test.actor, rideId);
		expect(sums(test)).toEqual([
			{ rides: 1, totalM: 20_000, observedM: 20_000, drivenM: 20_000, slips: 3 },
			{ rides: 1, totalM: 10_000, observedM: 0, drivenM: 5_000, slips: 0 }
		]);
	});

	it('is taken back by hand, by another wheel, and by a build for the whole ride', async () => {
		const { test, rideId, buildId } = await acrossAChange();
		splitRide(test.ledger, test.actor, rideId);
		joinRide(test.ledger, test.actor, rideId);
		expect(sums(test)).toEqual([none, none]);
		expect(rowsOf(test.ledger, 'SELECT * FROM ride_part')).toEqual([]);
		expect(() => joinRide(test.ledger, test.actor, rideId)).toThrow('not split');
		splitRide(test.ledger, test.actor, rideId);
		assignRide(test.ledger, test.actor, rideId, { buildId });
		expect(sums(test)[0]).toMatchObject({ totalM: 30_000, slips: 3 });
		assignRide(test.ledger, test.actor, rideId, { buildId: null });
		expect(sums(test)).toEqual([none, none]);
		expect(
			rowsOf(test.ledger, "SELECT action FROM trail WHERE subject = 'ride' ORDER BY id").map(
				(row) => row.action
			)
		).toEqual([
			'handed in',
			'split',
			'took the split back',
			'split',
			'assigned',
			'took the split back',
			'assigned'
		]);
	});

	it('refuses a ride during which nothing changed, and one without traces', async () => {
		const { test, rideId, wheelId, buildId } = await acrossAChange();
		const other = await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS });
		expect(() => splitRide(test.ledger, test.actor, other)).toThrow('nothing to split');
		expect(() => splitRide(test.ledger, test.actor, 999)).toThrow('no such ride');
		const { sourceSha256 } = rideView(test.ledger, rideId)!;
		removeChannels(test.ledger, sourceSha256);
		expect(() => splitRide(test.ledger, test.actor, rideId)).toThrow('made again');
		expect(rowsOf(test.ledger, 'SELECT * FROM ride_cut')).toEqual([]);
		expect([wheelId, buildId]).toEqual([1, 1]);
	});

	it('measures the parts again when a result is computed anew, and counts nothing until then', async () => {
		const { test, rideId } = await acrossAChange();
		splitRide(test.ledger, test.actor, rideId);
		const { sourceSha256: sha256 } = rideView(test.ledger, rideId)!;
		test.ledger.database.prepare('DELETE FROM ride_part').run();
		expect(rideView(test.ledger, rideId)).toMatchObject({ state: 'left out' });
		expect(sums(test)).toEqual([none, none]);
		const { database } = test.ledger;
		for (const table of ['slip_event', 'observed_stretch', 'result_detail', 'recording_kind', 'result'])
			database.prepare(`DELETE FROM ${table}`).run();
		const derivation = { rideId, sha256, fileName: 'ride.fit' } as Parameters<typeof saveDerivation>[2];
		saveDerivation(test.ledger, test.holder, derivation, analysedFile({ events, channels }));
		expect(sums(test)).toEqual(halves);
	});
});
