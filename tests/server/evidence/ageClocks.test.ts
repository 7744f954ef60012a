import { expect, test } from 'vitest';
import {
	buildAgainstBuild,
	changeBuild,
	buildHardware,
	createBuild,
	createPart,
	fitBuild,
	recordService,
	recordUnloggedDistance,
	type AgeClock
} from '$lib/server';
import { evidenceOfBuilds } from '$lib/server/evidence/buildEvidence';
import { wheelHistories } from '$lib/server/evidence/wheelHistories';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from '../testLedger';

const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();

/** three rides of 30 km on one wheel: two on the old build, one on the new one */
async function threeRides(ring: { serial: string }) {
	const test = freshLedger();
	const { ledger, actor } = test;
	const ringId = createPart(ledger, actor, {
		number: 'RR-1',
		name: 'ring',
		kind: 'ratchet ring',
		pointsOfEngagement: 24
	});
	const { wheelId, buildId: oldId } = withHardware(test);
	const newId = createBuild(ledger, actor, { name: 'New', description: '' });
	for (const [id, name] of [
		[oldId, 'Old'],
		[newId, 'New']
	] as const)
		changeBuild(ledger, actor, id, buildHardware(ledger, id)!.rowVersion, {
			name,
			description: '',
			stepHubDeg: 15,
			bill: [{ partId: ringId, quantity: 1, serial: ring.serial }],
			torques: []
		});
	fitBuild(ledger, actor, { wheelId, buildId: newId, from: at(60) });
	const rides = [];
	for (const hours of [0, 24, 72])
		rides.push(
			await addRide(test, { startedAtMs: START_MS + hours * HOUR_MS, events: [slipAt(100, { atM: 800 })] })
		);
	const ages = (buildId: number, clock: AgeClock) =>
		evidenceOfBuilds(ledger, [{ id: buildId, name: '' }], clock)[0].rides.map(({ ageFromM, life }) => [
			ageFromM,
			life
		]);
	return { ...test, wheelId, oldId, newId, ages };
}

test('A part with a serial brings along what it was ridden in another build', async () => {
	const { oldId, newId, ages } = await threeRides({ serial: '7' });
	expect(ages(oldId, 'ratchet ring')).toEqual([
		[0, 0],
		[30_000, 0]
	]);
	expect(ages(newId, 'build')).toEqual([[0, 0]]);
	expect(ages(newId, 'ratchet ring')).toEqual([[60_000, 0]]);
	// there is no spring with a serial: age since fitting
	expect(ages(newId, 'spring')).toEqual([[0, 0]]);
});

test('Without a serial nobody knows whether it is the same ring: age since fitting, and the page says so', async () => {
	const { ledger, newId, ages } = await threeRides({ serial: '' });
	expect(ages(newId, 'ratchet ring')).toEqual([[0, 0]]);
	const told = buildAgainstBuild(ledger, [{ id: newId, name: 'New' }], {
		unit: 'slips',
		shown: 'found',
		age: 'ratchet ring'
	});
	expect(told.builds[0].hasClock).toBe(false);
});

test('A service begins a life of its own, and distance without a recording ages it too', async () => {
	const { ledger, actor, wheelId, oldId, ages } = await threeRides({ serial: '' });
	recordService(ledger, actor, wheelId, { at: at(12), opened: true, cleaned: true });
	recordUnloggedDistance(ledger, actor, wheelId, { at: at(20), distanceM: 5_000 });
	expect(ages(oldId, 'build')).toEqual([
		[0, 0],
		[35_000, 0]
	]);
	expect(ages(oldId, 'service')).toEqual([
		[0, 0],
		[5_000, 1]
	]);
	const [evidence] = evidenceOfBuilds(ledger, [{ id: oldId, name: 'Old' }], 'service');
	const histories = wheelHistories(evidence, { unit: 'slips', unreviewed: 'slip' });
	// one history a life: windows of one may lie where those of the other do
	expect(histories.map(({ windows, events }) => [windows[0].from, events])).toEqual([
		[0, [800]],
		[5_000, [5_800]]
	]);
});

test('The clock changes at which age slips are filed and never how many there are', async () => {
	const { ledger, oldId, newId } = await threeRides({ serial: '7' });
	const told = (age: AgeClock) =>
		buildAgainstBuild(
			ledger,
			[
				{ id: oldId, name: 'Old' },
				{ id: newId, name: 'New' }
			],
			{ unit: 'slips', shown: 'found', age }
		);
	const [byBuild, byRing] = [told('build'), told('ratchet ring')];
	expect(byRing.builds.map(({ counted, observedM }) => [counted, observedM])).toEqual(
		byBuild.builds.map(({ counted, observedM }) => [counted, observedM])
	);
	expect(byRing.builds[1].life.curve[0].atM).toBe(60_800);
	expect(byBuild.builds[1].life.curve[0].atM).toBe(800);
});
