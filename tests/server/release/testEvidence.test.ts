import { expect, test } from 'vitest';
import { createBuild, fitBuild, recordVerdict, rideView } from '$lib/server';
import { releaseView, recordToSign } from '$lib/server/release/releaseView';
import { setReleaseCriteria } from '$lib/server/release/releaseCriteria';
import { listDecisions, sealRecord, signDecision } from '$lib/server/release/releaseDecisions';
import { nextInsertion, saveInsertion } from '$lib/server/queue/insertionQueue';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import type { InsertionResult } from '$lib/slip/insertionTest';
import { slipPath } from '$lib/server/release/slipPath';
import { CRITERIA, WORDS } from '../../release/testWords';
import { exposed, ride, slip } from '../evidence/rides';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from '../testLedger';

/** the old build slipped; the new one has a ride before its criteria were set and rides after */
async function programme() {
	const test = freshLedger();
	const { ledger, actor, clock } = test;
	const { wheelId, buildId: oldId } = withHardware(test);
	const buildId = createBuild(ledger, actor, { name: 'New', description: 'harder spring' });
	fitBuild(ledger, actor, {
		wheelId,
		buildId,
		from: new Date(START_MS + 12 * HOUR_MS).toISOString()
	});
	const exposure = (torqueNm: number) => ({ cells: [exposed(torqueNm, 20_000)], hours: [], marks: [] });
	await addRide(test, {
		events: [100, 200, 300].map((startS) => slipAt(startS)),
		exposure: exposure(30)
	});
	await addRide(test, { startedAtMs: START_MS + 24 * HOUR_MS, exposure: exposure(30) });
	const now = clock.ms;
	clock.ms = START_MS + 48 * HOUR_MS;
	setReleaseCriteria(ledger, actor, {
		buildId,
		referenceBuildId: oldId,
		criteria: CRITERIA,
		reason: 'as agreed before the test',
		seenVersion: null
	});
	clock.ms = now;
	const after = (day: number, change: object = {}, hints: object = {}) =>
		addRide(
			test,
			{ startedAtMs: START_MS + (48 + 24 * day) * HOUR_MS, exposure: exposure(40), ...change },
			hints
		);
	return { ...test, test, oldId, buildId, wheelId, after };
}

test('Only rides that begin after the criteria were set count for them', async () => {
	const { ledger, buildId, after } = await programme();
	const view = () => releaseView(ledger, buildId, WORDS).standing!.evidence;
	expect(view().wheels).toEqual([{ name: 'Wheel A', observedM: 0 }]);
	await after(1, {}, { wet: true });
	expect(view()).toMatchObject({
		wheels: [{ name: 'Wheel A', observedM: 20_000 }],
		observedMWet: 20_000,
		observedMDry: 0,
		observedMAboveHardTorque: 20_000
	});
});

test('An event counts as a slip until it is reviewed, and a rejected one leaves every figure at once', async () => {
	const { ledger, actor, buildId, after } = await programme();
	const rideId = await after(1, { events: [slipAt(600)] });
	const standing = () => releaseView(ledger, buildId, WORDS).standing!;
	const before = standing();
	expect(before.evidence).toMatchObject({
		confirmed: 0,
		unreviewed: 1,
		lastThird: { slips: 0, confirmed: 0 }
	});
	expect(before.evidence.slipsAtObservedM).toEqual([4_800]);
	const [event] = rideView(ledger, rideId)!.eventList;
	recordVerdict(ledger, actor, event.id, { verdict: 'rejected', reason: 'shift' });
	expect(standing().evidence).toMatchObject({ confirmed: 0, unreviewed: 0, slipsAtObservedM: [] });
	expect(standing().recordSha256).not.toBe(before.recordSha256);
});

test('A release waits until it is known how many slips its rides would not have shown, and counts them in', async () => {
	const { ledger, holder, buildId, after } = await programme();
	const notFound = () => releaseView(ledger, buildId, WORDS).standing!.evidence.notFound;
	expect(notFound()).toEqual({ ridesWaiting: 0, factor: null });
	const rideId = await after(1);
	expect(notFound()).toEqual({ ridesWaiting: 1, factor: null });
	const before = releaseView(ledger, buildId, WORDS).standing!.recordSha256;
	for (let waits = nextInsertion(ledger, []); waits; waits = nextInsertion(ledger, []))
		saveInsertion(ledger, holder, waits, insertionOf(waits.rideId === rideId ? 60 : 0));
	const { ridesWaiting, factor } = notFound();
	expect(ridesWaiting).toBe(0);
	expect(factor).toMatchObject({ put: 80, found: 60 });
	// 80 put in at one place of one ride, three of four found: 1.33 stand for one, up to 1.5 by 1.96 standard errors
	expect(factor!.upper).toBeGreaterThan(80 / 60);
	expect(factor!.upper).toBeLessThan(1.6);
	expect(releaseView(ledger, buildId, WORDS).standing!.recordSha256).not.toBe(before);
});

/** 80 slips of the reference size put into observed stretches at 40 Nm, so many of them found */
function insertionOf(found: number): InsertionResult {
	const tally = {
		sizeCrankDeg: 90,
		place: 'steady' as const,
		torqueFromNm: 40,
		observed: true,
		put: 80,
		found
	};
	return {
		analysisVersion: ANALYSIS_VERSION,
		seed: 7,
		passes: 3,
		put: 80,
		found,
		observedChangeM: 0,
		notRun: null,
		tallies: [tally],
		probes: []
	};
}

test('What is signed is what was shown; what changed meanwhile stops the signature', async () => {
	const { ledger, actor, buildId, after } = await programme();
	await after(1);
	const seen = releaseView(ledger, buildId, WORDS);
	const sign = () => {
		const { record, allHold } = recordToSign(ledger, buildId, WORDS)!;
		return signDecision(
			ledger,
			actor,
			{
				buildId,
				decision: 'continue',
				reason: 'more distance is wanted',
				seenCriteriaId: seen.versions[0].id,
				seenRecordSha256: seen.standing!.recordSha256
			},
			record,
			allHold
		);
	};
	sign();
	expect(listDecisions(ledger, buildId)).toMatchObject([{ decision: 'continue', whole: true }]);
	await after(2);
	expect(sign).toThrow(/changed since the page was shown/);
});

test('The same ledger gives the same record, without names of people', async () => {
	const { ledger, buildId, after } = await programme();
	await after(1, { events: [slipAt(600)] });
	const seal = () => sealRecord(recordToSign(ledger, buildId, WORDS)!.record);
	expect(seal().sha256).toBe(seal().sha256);
	expect(seal().text).not.toContain('Owner of the test');
	expect(JSON.parse(seal().text)).toMatchObject({
		criteria: { version: 1 },
		rides: [{ observedM: 20_000, slips: [{ overrunCrankDeg: 120, standing: 'unreviewed' }] }]
	});
});

test('A build without criteria, rides or parts stands as what it is', async () => {
	const { ledger, actor } = await programme();
	const buildId = createBuild(ledger, actor, { name: 'Drawn only', description: 'not made yet' });
	const view = releaseView(ledger, buildId, WORDS);
	expect(view).toMatchObject({ standing: null, versions: [], pace: { observedMPerWeek: 0, wheels: 0 } });
	expect(recordToSign(ledger, buildId, WORDS)).toBeNull();
});

test('How many plans were tried is told', async () => {
	const { ledger, actor, buildId } = await programme();
	setReleaseCriteria(ledger, actor, {
		buildId,
		referenceBuildId: null,
		criteria: { ...CRITERIA, riders: 1 },
		reason: 'only one rider is left',
		seenVersion: 1
	});
	expect(releaseView(ledger, buildId, WORDS).tried).toEqual({ builds: 1, plans: 2 });
});

test('Slips are laid along the observed distance of all wheels in order of time', () => {
	const later = ride({
		startMs: 2,
		observed: [{ fromM: 10_000, toM: 50_000 }],
		events: []
	});
	const burst = [slip({ atM: 30_000, standing: 'confirmed' }), slip({ startS: 104, atM: 30_050 })];
	const earlier = ride({ startMs: 1, events: [slip({ atM: 5_000 })] });
	// a second slip within ten seconds belongs to the first
	expect(slipPath([{ ...later, events: burst }, earlier])).toEqual({
		observedM: 80_000,
		slipsAtM: [5_000, 60_000],
		confirmedAtM: [60_000]
	});
});

test('What hangs on the rejections is told: the criteria as they would stand if every rejected event were a slip', async () => {
	const { ledger, actor, buildId, after } = await programme();
	const rideId = await after(1, { events: [slipAt(100), slipAt(600)] });
	const told = () => releaseView(ledger, buildId, WORDS).standing!.ifRejectedCounted;
	expect(told()).toBeNull();
	for (const { id } of rideView(ledger, rideId)!.eventList)
		recordVerdict(ledger, actor, id, { verdict: 'rejected', reason: 'shift' });
	const { rejected, state, otherwise } = told()!;
	expect([rejected, state]).toEqual([2, 'stopped']);
	expect(otherwise.length).toBeGreaterThan(0);
	expect(otherwise.every(({ state }) => state !== 'holds')).toBe(true);
	// nothing of it reaches the standing itself
	expect(releaseView(ledger, buildId, WORDS).standing!.evidence.slipsAtObservedM).toEqual([]);
});
