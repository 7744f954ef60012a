import { describe, expect, it } from 'vitest';
import {
	assignRide,
	chartCsv,
	comparison,
	createBuild,
	fitBuild,
	mayUse,
	recordVerdict,
	reportJson,
	reportView,
	rideView,
	withdrawRide,
	type ComparisonPolicy
} from '$lib/server';
import { torqueCoverage } from '$lib/server/evidence/torqueCoverage';
import { createFormats } from '$lib/ui/formats';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from '../testLedger';

const POLICY: ComparisonPolicy = { unit: 'slips', shown: 'found' };
const WORDS = createFormats('en-GB', 'UTC');
const HOSTILE = '=HYPERLINK("x")<script>';

/** the old build with three slips on one ride, the new one, whose name is hostile, with none on two */
async function twoBuilds() {
	const test = freshLedger();
	const { ledger, actor } = test;
	const { wheelId, buildId: oldId } = withHardware(test);
	const newId = createBuild(ledger, actor, { name: HOSTILE, description: 'harder spring', stepHubDeg: 12 });
	fitBuild(ledger, actor, { wheelId, buildId: newId, from: new Date(START_MS + 12 * HOUR_MS).toISOString() });
	const rider = { riderId: actor.personId };
	const oldRide = await addRide(test, { events: [slipAt(100), slipAt(200), slipAt(300)] }, rider);
	const rides = [
		await addRide(test, { startedAtMs: START_MS + 24 * HOUR_MS }, rider),
		await addRide(test, { startedAtMs: START_MS + 48 * HOUR_MS }, rider)
	];
	const report = (policy = POLICY) => reportView(ledger, oldId, newId, policy, WORDS);
	return { ...test, oldId, newId, oldRide, rides, report };
}

describe('reportView', () => {
	it('says of each build how far it was ridden, observed and by how many riders', async () => {
		const { report } = await twoBuilds();
		const view = report();
		expect(view.before).toMatchObject({ name: 'Old', rides: 1, totalM: 30_000, observedM: 20_000 });
		expect(view.after).toMatchObject({ name: HOSTILE, rides: 2, totalM: 60_000, observedM: 40_000 });
		expect(view.rides.riders.map(({ named, without }) => [named, without])).toEqual([
			[1, 0],
			[1, 0]
		]);
		expect(view.rides.ridersTogether).toBe(1);
		expect(view.difference.step).toEqual({ before: 15, after: 12 });
		expect(view.release).toMatchObject({ criteria: null, decisions: [] });
	});

	it('lists every ride that counts with the hash of its file, and each left out with its reason', async () => {
		const { ledger, actor, rides, report, oldRide } = await twoBuilds();
		withdrawRide(ledger, actor, rides[1], 'the sensor was loose');
		const { counted, leftOut } = report().rides;
		const hashes = counted.map(({ sha256 }) => sha256);
		expect(hashes).toHaveLength(2);
		for (const sha256 of hashes) expect(sha256).toMatch(/^[0-9a-f]{64}$/);
		expect(new Set(hashes).size).toBe(2);
		expect(counted[0].build).toBe('Old');
		expect(leftOut.map(({ build, why }) => [build, why])).toEqual([
			[HOSTILE, 'withdrawn: the sensor was loose']
		]);
		assignRide(ledger, actor, oldRide, { wheelId: null });
		expect(report().rides.counted).toHaveLength(1);
	});

	it('names no rider, neither by name nor by code, nor a file', async () => {
		const { report } = await twoBuilds();
		const text = reportJson(report());
		expect(text).not.toContain('Owner of the test');
		expect(text).not.toContain('"P1"');
		expect(text).not.toContain('ride.fit');
		expect(
			report()
				.told.builds.flatMap(({ dependsOn }) => dependsOn.factors)
				.map((f) => f.factor)
		).not.toContain('rider');
	});

	it('changes with a verdict at once', async () => {
		const { ledger, actor, oldRide, report } = await twoBuilds();
		expect(report().told.against[0].decides.ratio.upper).toBeNull();
		for (const { id } of rideView(ledger, oldRide)!.eventList)
			recordVerdict(ledger, actor, id, { verdict: 'confirmed' });
		expect(report().told.builds[0].best.pooled.count).toBe(3);
		expect(report().told.against[0].decides.ratio.upper).toBeGreaterThan(0);
	});

	it('stands for builds that were never ridden', () => {
		const test = freshLedger();
		const ids = ['One', 'Two'].map((name) => createBuild(test.ledger, test.actor, { name, description: '' }));
		const view = reportView(test.ledger, ids[0], ids[1], POLICY, WORDS);
		expect(view.rides.counted).toEqual([]);
		expect(view.coverage).toMatchObject({ fromNm: null, aboveM: 0 });
		expect(JSON.parse(reportJson(view))).toMatchObject({ before: { observedM: 0 } });
		expect(() => reportView(test.ledger, ids[0], 99, POLICY, WORDS)).toThrow('There is no such build.');
	});
});

describe('the routes of the report', () => {
	it.each(['/report', '/report/figures.json', '/report/charts/[name].svg', '/report/charts/[name].csv'])(
		'%s is read by engineers and owners',
		(route) => {
			const answers = ([null, 'rider', 'engineer', 'owner'] as const).map((role) =>
				mayUse(route, 'GET', role, false)
			);
			expect(answers).toEqual(['choose a name', 'not allowed', 'allowed', 'allowed']);
		}
	);
});

describe('reportJson', () => {
	it('is the view, and the same bytes again but for the instant at which it was made', async () => {
		const { report, clock } = await twoBuilds();
		const view = report();
		const data = JSON.parse(reportJson(view)) as typeof view;
		expect(data.told.builds.map(({ worst }) => worst.pooled.count)).toEqual([3, 0]);
		expect(data.told.builds[1].worst.pooled.upperPerHundredKm).toBeCloseTo(
			view.told.builds[1].worst.pooled.upperPerHundredKm!,
			9
		);
		expect(data.rides).toEqual(view.rides);
		const first = reportJson(view);
		clock.ms += HOUR_MS;
		const later = reportJson(report());
		expect(later).not.toBe(first);
		const madeAt = /"madeAt":"[^"]*"/;
		expect(later.replace(madeAt, '')).toBe(first.replace(madeAt, ''));
	});
});

describe('torqueCoverage', () => {
	const bin = (from: number | null, count: number, observedM: number) => ({
		from,
		to: from === null ? null : from + 10,
		rate: {
			count,
			observedM,
			ratePerHundredKm: null,
			lowerPerHundredKm: 0,
			upperPerHundredKm: null,
			confidence: 0.95
		}
	});

	it('adds up where the old build slipped, and no torque that is not known', () => {
		const before = { overTorque: [bin(0, 0, 900), bin(20, 1, 500), bin(30, 2, 100), bin(null, 1, 70)] };
		const after = { overTorque: [bin(0, 0, 800), bin(20, 0, 300), bin(30, 0, 40), bin(null, 0, 60)] };
		expect(torqueCoverage(before, after)).toEqual({
			fromNm: 20,
			highestNm: 30,
			aboveM: 340,
			aboveHighestM: 40,
			slipsWithoutTorque: 1
		});
	});

	it('claims no distance above a torque that no slip names', () => {
		const before = { overTorque: [bin(0, 0, 900), bin(null, 3, 70)] };
		expect(torqueCoverage(before, { overTorque: [bin(0, 0, 800)] })).toEqual({
			fromNm: null,
			highestNm: null,
			aboveM: 0,
			aboveHighestM: 0,
			slipsWithoutTorque: 3
		});
	});
});

describe('chartCsv', () => {
	async function csvOf(name: Parameters<typeof chartCsv>[0]) {
		const { ledger, report, oldId, newId } = await twoBuilds();
		const { lines } = comparison(ledger, [oldId, newId]);
		return chartCsv(name, report().told, lines).trimEnd().split('\r\n');
	}

	it('gives rates pooled and wheel by wheel, in both cases, and neutralises a formula in a name', async () => {
		const lines = await csvOf('rates');
		expect(lines[0]).toBe(
			'build,unreviewed_count_as,wheel,slips,observed_km,per_100_observed_km,lower,upper,confidence'
		);
		expect(lines).toHaveLength(9);
		expect(lines[1]).toMatch(/^Old,slips,all,3,20,15,[\d.]+,[\d.]+,0\.95$/);
		expect(lines[3]).toMatch(/^Old,none,all,0,20,0,0,[\d.]+,0\.95$/);
		expect(lines[5]).toMatch(/^"'=HYPERLINK\(""x""\)<script>",slips,all,0,40,0,0,/);
	});

	it('gives bins with their edges in kilometres, and the slips of a wheel by distance', async () => {
		expect((await csvOf('over-age'))[1]).toMatch(/^Old,0,25,3,/);
		const slips = await csvOf('slips-over-distance');
		expect(slips).toHaveLength(4);
		expect(slips[1]).toBe('Old,Wheel A,0.8,1,not reviewed');
		expect((await csvOf('mean-slips'))[3]).toMatch(/^Old,2\.4,3,/);
	});

	it('leaves a cell empty where a rate cannot be given', async () => {
		const bins = await csvOf('over-torque');
		expect(bins[1]).toBe('Old,0,4,0,0,,,,0.95');
		expect(bins[11]).toBe('Old,,,0,0,,,,0.95');
	});
});
