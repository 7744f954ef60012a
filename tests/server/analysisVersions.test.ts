import { afterEach, describe, expect, it, vi } from 'vitest';

const version = vi.hoisted(() => ({ ANALYSIS_VERSION: 1 }));
vi.mock('$lib/slip/analysisVersion', () => version);

import { programmeRows, recordVerdict, rideChannels, rideView } from '$lib/server';
import { currentVersion, keepFirstVersion } from '$lib/server/queue/analysisVersions';
import {
	beginDerivation,
	failDerivation,
	listDerivations,
	saveDerivation
} from '$lib/server/queue/derivations';
import { MOST_ATTEMPTS } from '$lib/server/queue/importQueue';
import { makeVersionCurrent, removeVersion } from '$lib/server/versions/makeVersionCurrent';
import { rideStages } from '$lib/server/versions/rideStages';
import { unmatchedVerdicts } from '$lib/server/versions/unmatchedVerdicts';
import { versionDifferences } from '$lib/server/versions/versionDifferences';
import { versionState } from '$lib/server/versions/versionState';
import type { AnalysedFile } from '../../src/jobs/analysis/messages';
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

afterEach(() => {
	version.ANALYSIS_VERSION = 1;
});

async function reviewedLedger() {
	const test = freshLedger();
	withHardware(test);
	keepFirstVersion(test.ledger);
	const rideIds = [
		await addRide(test, { events: [slipAt(100), slipAt(200)], analysisVersion: 1 }),
		await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS, analysisVersion: 1 })
	];
	const [first, second] = rideView(test.ledger, rideIds[0])!.eventList;
	recordVerdict(test.ledger, test.actor, first.id, { verdict: 'confirmed' });
	recordVerdict(test.ledger, test.actor, second.id, { verdict: 'rejected', reason: 'shift' });
	return { ...test, rideIds };
}

/** Computes all rides by the newer version, the first with these events. */
function deriveAll({ ledger, holder }: TestLedger, first: Partial<AnalysedFile> = {}): void {
	version.ANALYSIS_VERSION = 2;
	listDerivations(ledger).forEach((derivation, k) =>
		saveDerivation(
			ledger,
			holder,
			derivation,
			analysedFile({ analysisVersion: 2, ...(k === 0 ? first : {}) })
		)
	);
}

describe('a newer analysis version', () => {
	it('is computed beside the old one, waits when it is complete, and becomes current by a person', async () => {
		const test = await reviewedLedger();
		const { ledger, holder, actor } = test;
		version.ANALYSIS_VERSION = 2;
		expect(currentVersion(ledger)).toBe(1);
		const [first, second] = listDerivations(ledger);
		saveDerivation(ledger, holder, first, analysedFile({ analysisVersion: 2, events: [slipAt(101.5)] }));
		expect(versionState(ledger)).toMatchObject({
			current: 1,
			program: 2,
			rides: 2,
			missing: 1,
			waits: false
		});
		expect(() => makeVersionCurrent(ledger, actor, 2, 1)).toThrow('still to be computed');
		expect(programmeRows(ledger)[0].counted).toMatchObject({ confirmed: 1, rejected: 1 });
		saveDerivation(ledger, holder, second, analysedFile({ analysisVersion: 2, observedM: 10_000 }));
		expect(versionState(ledger)).toMatchObject({ current: 1, missing: 0, waits: true });
		expect(programmeRows(ledger)[0].counted).toMatchObject({ confirmed: 1, rejected: 1 });
		makeVersionCurrent(ledger, actor, 2, 1);
		expect(currentVersion(ledger)).toBe(2);
		expect(rowsOf(ledger, 'SELECT DISTINCT version FROM result')).toHaveLength(2);
		expect(programmeRows(ledger)[0]).toMatchObject({
			observedM: 30_000,
			counted: { confirmed: 1, rejected: 0, unreviewed: 0 }
		});
		expect(versionState(ledger).waits).toBe(false);
	});

	it('keeps verdicts for events that moved a little, and names those that lost theirs', async () => {
		const test = await reviewedLedger();
		const { ledger, actor, rideIds } = test;
		deriveAll(test, { events: [slipAt(101.5)] });
		expect(unmatchedVerdicts(ledger)).toEqual([]);
		expect(versionDifferences(ledger, 2).lostVerdicts).toMatchObject([
			{ verdictId: 2, rideId: rideIds[0], verdict: 'rejected', startS: 200 }
		]);
		makeVersionCurrent(ledger, actor, 2, 1);
		expect(unmatchedVerdicts(ledger)).toMatchObject([{ verdictId: 2, verdict: 'rejected', startS: 200 }]);
		expect(rideView(ledger, rideIds[0])!.eventList).toMatchObject([{ verdict: { verdict: 'confirmed' } }]);
		const [{ detail, actor_id }] = rowsOf(
			ledger,
			"SELECT detail, actor_id FROM trail WHERE action = 'changed over'"
		);
		expect(JSON.parse(String(detail))).toEqual({ before: 1, verdictsWithoutEvent: [2] });
		expect(actor_id).toBe(actor.personId);
		expect(rowsOf(ledger, 'SELECT 1 FROM verdict WHERE superseded_ms IS NULL')).toHaveLength(2);
	});

	it('carries a verdict over that was given while it was being computed', async () => {
		const test = await reviewedLedger();
		const { ledger, actor, rideIds } = test;
		deriveAll(test, { events: [slipAt(100), slipAt(200)] });
		const [, second] = rideView(ledger, rideIds[0])!.eventList;
		recordVerdict(ledger, actor, second.id, { verdict: 'confirmed' });
		makeVersionCurrent(ledger, actor, 2, 1);
		expect(rideView(ledger, rideIds[0])!.eventList.map(({ verdict }) => verdict?.verdict)).toEqual([
			'confirmed',
			'confirmed'
		]);
	});

	it('leaves a ride out that it cannot analyse, instead of waiting for it for ever, and says so before', async () => {
		const test = await reviewedLedger();
		const { ledger, holder, actor, rideIds } = test;
		version.ANALYSIS_VERSION = 2;
		const [first, second] = listDerivations(ledger);
		saveDerivation(ledger, holder, first, analysedFile({ analysisVersion: 2 }));
		failDerivation(ledger, (beginDerivation(ledger, second), second), 'not a ride any more');
		expect(versionState(ledger)).toMatchObject({
			waits: true,
			failed: [{ rideId: rideIds[1], sentence: 'not a ride any more' }]
		});
		makeVersionCurrent(ledger, actor, 2, 1);
		expect(rideView(ledger, rideIds[1])!.state).toBe('left out');
		expect(listDerivations(ledger)).toEqual([]);
	});

	it('gives a ride up that ended the program too often', async () => {
		const test = await reviewedLedger();
		version.ANALYSIS_VERSION = 2;
		const [first, second] = listDerivations(test.ledger);
		for (let attempt = 0; attempt < MOST_ATTEMPTS; attempt++) beginDerivation(test.ledger, first);
		expect(listDerivations(test.ledger).map(({ rideId }) => rideId)).toEqual([second.rideId]);
		saveDerivation(test.ledger, test.holder, second, analysedFile({ analysisVersion: 2 }));
		expect(versionState(test.ledger).waits).toBe(true);
	});

	it('is switched to once: who looks at an older page is told what is current meanwhile', async () => {
		const test = await reviewedLedger();
		deriveAll(test);
		makeVersionCurrent(test.ledger, test.actor, 2, 1);
		expect(() => makeVersionCurrent(test.ledger, test.actor, 2, 1)).toThrow('Version 2 is current meanwhile');
	});

	it('can be left again while the older results are kept: then all is as it was', async () => {
		const test = await reviewedLedger();
		const { ledger, actor, rideIds } = test;
		const before = [programmeRows(ledger), rideView(ledger, rideIds[0]), rideChannels(ledger, rideIds[0])];
		deriveAll(test, { events: [slipAt(101.5)], observedM: 5 });
		makeVersionCurrent(ledger, actor, 2, 1);
		expect(programmeRows(ledger)).not.toEqual(before[0]);
		makeVersionCurrent(ledger, actor, 1, 2);
		const after = [programmeRows(ledger), rideView(ledger, rideIds[0]), rideChannels(ledger, rideIds[0])];
		expect(after).toEqual(before);
	});

	it('cannot be left for one whose results were removed', async () => {
		const test = await reviewedLedger();
		const { ledger, actor } = test;
		deriveAll(test);
		expect(() => removeVersion(ledger, actor, 1)).toThrow('not current');
		makeVersionCurrent(ledger, actor, 2, 1);
		removeVersion(ledger, actor, 1);
		expect(rowsOf(ledger, 'SELECT DISTINCT version FROM slip_event')).toEqual([]);
		expect(ledger.channels.prepare('SELECT DISTINCT version FROM channel').all()).toEqual([{ version: 2 }]);
		expect(() => makeVersionCurrent(ledger, actor, 1, 2)).toThrow('No results of version 1');
		expect(rowsOf(ledger, "SELECT 1 FROM trail WHERE action = 'removed'")).toHaveLength(1);
	});

	it('alone has rides that came in while it waited: they are there, count from the switch on, and say so', async () => {
		const test = await reviewedLedger();
		const { ledger, actor } = test;
		version.ANALYSIS_VERSION = 2;
		const rideId = await addRide(test, { startedAtMs: START_MS + 9 * HOUR_MS, analysisVersion: 2 });
		expect(currentVersion(ledger)).toBe(1);
		expect(rideView(ledger, rideId)).toMatchObject({ state: 'left out', totalM: 0 });
		expect(rideStages(ledger, rideId)).toMatchObject({ waitsForVersion: 2, insertion: null });
		const [{ rides }] = programmeRows(ledger);
		deriveAll(test);
		expect(versionDifferences(ledger, 2).onAll).toMatchObject({ rides: 2, onlyAfter: 1, onlyBefore: 0 });
		makeVersionCurrent(ledger, actor, 2, 1);
		expect(programmeRows(ledger)[0].rides).toBe(rides + 1);
		expect(rideStages(ledger, rideId)?.waitsForVersion).toBeNull();
	});

	it('needs no switch in a ledger that holds nothing of an older one', async () => {
		const test = freshLedger();
		keepFirstVersion(test.ledger);
		version.ANALYSIS_VERSION = 2;
		keepFirstVersion(test.ledger);
		expect(currentVersion(test.ledger)).toBe(2);
		await addRide(test, { analysisVersion: 2 });
		version.ANALYSIS_VERSION = 3;
		keepFirstVersion(test.ledger);
		expect(currentVersion(test.ledger)).toBe(2);
	});
});

describe('what differs between two versions', () => {
	it('is told of reviewed rides: what appeared, vanished, moved, grew, or left the rate', async () => {
		const test = await reviewedLedger();
		const { ledger, rideIds } = test;
		deriveAll(test, {
			events: [
				slipAt(102.5, {
					overrunCrankDeg: { value: 160, lower: 145, upper: 175 },
					observed: false,
					strength: 0.4
				}),
				slipAt(900)
			],
			observedM: 19_000
		});
		const { reviewed, onReviewed, reviewedRides, others } = versionDifferences(ledger, 2);
		expect(reviewedRides).toBe(1);
		expect(others).toEqual([]);
		expect(reviewed).toMatchObject([
			{ rideId: rideIds[0], verdicts: 2, observedM: { before: 20_000, after: 19_000 } }
		]);
		expect(reviewed[0].events).toMatchObject([
			{
				what: 'changed',
				changes: ['start', 'size', 'strength', 'rate'],
				before: { startS: 100, verdict: 'confirmed', inRate: true },
				after: { startS: 102.5, inRate: false }
			},
			{ what: 'vanished', before: { startS: 200, verdict: 'rejected' }, after: null },
			{ what: 'appeared', before: null, after: { startS: 900, verdict: null } }
		]);
		expect(onReviewed).toMatchObject({
			appeared: 1,
			vanished: 1,
			changed: 1,
			inRate: { before: 2, after: 1 }
		});
	});

	it('is no difference when it stays within the second and the limits', async () => {
		const test = await reviewedLedger();
		deriveAll(test, {
			events: [
				slipAt(100.4, { overrunCrankDeg: { value: 125, lower: 110, upper: 150 }, strength: 0.95 }),
				slipAt(200)
			]
		});
		expect(versionDifferences(test.ledger, 2)).toMatchObject({ reviewed: [], onAll: { changed: 0 } });
	});

	it('foretells of each build exactly what the switch then does, and changes nothing itself', async () => {
		const test = await reviewedLedger();
		const { ledger, actor } = test;
		deriveAll(test, { events: [slipAt(101)], observedM: 11_000 });
		const before = programmeRows(ledger);
		const { builds } = versionDifferences(ledger, 2);
		expect(programmeRows(ledger)).toEqual(before);
		expect(currentVersion(ledger)).toBe(1);
		expect(builds.map((build) => build.before)).toEqual(before);
		makeVersionCurrent(ledger, actor, 2, 1);
		expect(programmeRows(ledger)).toEqual(builds.map((build) => build.after));
		expect(programmeRows(ledger)).not.toEqual(before);
	});
});

describe('lost traces', () => {
	it('are derived again, the result stays as it is', async () => {
		const test = await reviewedLedger();
		const { ledger, holder, rideIds } = test;
		ledger.channels.exec('PRAGMA foreign_keys = ON; DELETE FROM channel');
		expect(rideChannels(ledger, rideIds[0])).toBeNull();
		const lost = listDerivations(ledger);
		expect(lost).toHaveLength(2);
		for (const derivation of lost) saveDerivation(ledger, holder, derivation, analysedFile());
		expect(rideChannels(ledger, rideIds[0])).not.toBeNull();
		expect(programmeRows(ledger)[0].counted.confirmed).toBe(1);
		expect(listDerivations(ledger)).toEqual([]);
	});
});
