import { expect, test } from 'vitest';
import {
	buildAgainstBuild,
	createBuild,
	fitBuild,
	recordVerdict,
	rideView,
	type ComparisonPolicy
} from '$lib/server';
import { evidenceOfBuilds } from '$lib/server/evidence/buildEvidence';
import { exposed } from './rides';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from '../testLedger';

const POLICY: ComparisonPolicy = { unit: 'slips', shown: 'found' };

/** the old build with eight slips on its ride, the new one with one on its own, all at 30 Nm */
async function twoBuilds(newTorqueNm = 30) {
	const test = freshLedger();
	const { ledger, actor } = test;
	const { wheelId, buildId: oldId } = withHardware(test);
	const newId = createBuild(ledger, actor, { name: 'New', description: 'harder spring' });
	fitBuild(ledger, actor, {
		wheelId,
		buildId: newId,
		from: new Date(START_MS + 12 * HOUR_MS).toISOString()
	});
	const exposure = (torqueNm: number) => ({ cells: [exposed(torqueNm, 20_000)], hours: [], marks: [] });
	const oldRide = await addRide(test, {
		events: [100, 200, 300, 400, 500, 600, 700, 800].map((startS) => slipAt(startS)),
		exposure: exposure(30)
	});
	const newRide = await addRide(test, {
		startedAtMs: START_MS + 24 * HOUR_MS,
		events: [slipAt(100, { hubTorqueNm: { value: newTorqueNm, lower: 1, upper: 99 } })],
		exposure: exposure(newTorqueNm)
	});
	const builds = [
		{ id: oldId, name: 'Old' },
		{ id: newId, name: 'New' }
	];
	const confirmAll = (rideId: number) => {
		for (const { id } of rideView(ledger, rideId)!.eventList)
			recordVerdict(ledger, actor, id, { verdict: 'confirmed' });
	};
	const told = (policy = POLICY) => buildAgainstBuild(ledger, builds, policy);
	return { ...test, oldRide, newRide, confirmAll, told };
}

test('What nobody has reviewed counts on the new build and not on the old one, until somebody does', async () => {
	const { told, confirmAll, oldRide } = await twoBuilds();
	const before = told().against[0];
	expect(before.decides.ratio).toMatchObject({ ratio: null, upper: null });
	expect(before.decides.expected).toMatchObject({ counted: 1, expected: 0, upper: null });
	expect(before.asFound.ratio.ratio).toBeCloseTo(1 / 8, 9);
	confirmAll(oldRide);
	const { ratio, expected } = told().against[0].decides;
	expect(ratio.ratio).toBeCloseTo(1 / 8, 9);
	// limits of Clopper and Pearson 1934 for 1 of 9: 0.281 % to 48.25 %; bursts can only widen them
	expect(ratio.lower).toBeLessThanOrEqual(0.00281 / 0.99719 + 1e-4);
	expect(ratio.upper!).toBeGreaterThanOrEqual(0.4825 / 0.5175 - 1e-3);
	expect(expected).toMatchObject({ counted: 1, comparedM: 20_000, notComparedM: 0 });
	expect(expected.expected).toBeCloseTo(8, 9);
});

test('A rejected event changes every figure that used it at once', async () => {
	const { ledger, actor, told, newRide } = await twoBuilds();
	const [event] = rideView(ledger, newRide)!.eventList;
	recordVerdict(ledger, actor, event.id, { verdict: 'rejected', reason: 'sensor' });
	const { builds, against } = told();
	const sum = (rates: readonly { rate: { count: number } }[]) =>
		rates.reduce((total, { rate }) => total + rate.count, 0);
	expect(builds[1].counted).toBe(0);
	expect(builds[1].worst.pooled.count).toBe(0);
	expect(sum(builds[1].overAge) + sum(builds[1].overTorque) + sum(builds[1].overHours)).toBe(0);
	expect(against[0].asFound.expected.counted).toBe(0);
	expect(against[0].asFound.ratio.ratio).toBe(0);
});

test('A new build ridden only gently does not pass on the old hard kilometres', async () => {
	const { told, confirmAll, oldRide } = await twoBuilds(5);
	confirmAll(oldRide);
	expect(told().against[0].decides.expected).toMatchObject({
		counted: 0,
		expected: 0,
		upper: null,
		notComparedM: 20_000,
		slipsNotCompared: 1
	});
});

test('A build without rides has nothing observed, no rate and no upper limit', async () => {
	const { ledger, actor } = await twoBuilds();
	const id = createBuild(ledger, actor, { name: 'Drawn only', description: 'not made yet' });
	const { builds } = buildAgainstBuild(ledger, [{ id, name: 'Drawn only' }], POLICY);
	expect(builds[0]).toMatchObject({ observedM: 0, counted: 0, overAge: [] });
	expect(builds[0].worst.pooled).toMatchObject({ ratePerHundredKm: null, upperPerHundredKm: null });
});

test('A burst in one ride does not give a narrow interval', async () => {
	const test = freshLedger();
	const { buildId } = withHardware(test);
	for (let ride = 0; ride < 9; ride++)
		await addRide(test, {
			startedAtMs: START_MS + ride * 24 * HOUR_MS,
			events: ride === 4 ? Array.from({ length: 20 }, (_, index) => slipAt(100 + 30 * index)) : []
		});
	const builds = [{ id: buildId, name: 'Old' }];
	const [burst] = buildAgainstBuild(test.ledger, builds, POLICY).builds;
	const exactUpper = 30.888 / 1.8; // Garwood 1936: 20 events, upper 95 % limit 30.888
	expect(burst.worst.pooled.upperPerHundredKm!).toBeGreaterThan(1.5 * exactUpper);
	expect(burst.worst.pooled.decidedBy).not.toBe('single');
});

test('Slips that follow each other within 10 s are one episode when episodes are counted', async () => {
	const test = freshLedger();
	const { buildId } = withHardware(test);
	await addRide(test, { events: [slipAt(100), slipAt(105), slipAt(300)] });
	const counted = (unit: ComparisonPolicy['unit']) =>
		buildAgainstBuild(test.ledger, [{ id: buildId, name: 'Old' }], { unit, shown: 'found' }).builds[0]
			.counted;
	expect(counted('slips')).toBe(3);
	expect(counted('episodes')).toBe(2);
});

test('A build keeps its name, whoever asked for its evidence first', async () => {
	const { ledger } = await twoBuilds();
	evidenceOfBuilds(ledger, [{ id: 1, name: '' }]);
	const { builds } = buildAgainstBuild(ledger, [{ id: 1, name: 'Old' }], POLICY);
	expect(builds[0].name).toBe('Old');
});
