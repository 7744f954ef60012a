import { afterEach, describe, expect, it, vi } from 'vitest';

const version = vi.hoisted(() => ({ ANALYSIS_VERSION: 1 }));
vi.mock('$lib/slip/analysisVersion', () => version);

import { programmeRows, recordVerdict, rideChannels, rideView } from '$lib/server';
import {
	currentVersion,
	keepFirstVersion,
	switchVersionWhenComplete
} from '$lib/server/queue/analysisVersions';
import {
	beginDerivation,
	failDerivation,
	listDerivations,
	saveDerivation
} from '$lib/server/queue/derivations';
import { MOST_ATTEMPTS } from '$lib/server/queue/importQueue';
import {
	addRide,
	analysedFile,
	freshLedger,
	HOUR_MS,
	rowsOf,
	slipAt,
	START_MS,
	withHardware
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

describe('a newer analysis version', () => {
	it('is computed beside the old one and becomes current only when every ride has it', async () => {
		const test = await reviewedLedger();
		const { ledger, holder } = test;
		version.ANALYSIS_VERSION = 2;
		expect(currentVersion(ledger)).toBe(1);
		const [first, second] = listDerivations(ledger);
		saveDerivation(ledger, holder, first, analysedFile({ analysisVersion: 2, events: [slipAt(101.5)] }));
		expect(switchVersionWhenComplete(ledger)).toBe(false);
		expect(programmeRows(ledger)[0].counted).toMatchObject({ confirmed: 1, rejected: 1 });
		saveDerivation(ledger, holder, second, analysedFile({ analysisVersion: 2, observedM: 10_000 }));
		expect(switchVersionWhenComplete(ledger)).toBe(true);
		expect(currentVersion(ledger)).toBe(2);
		expect(ledger.channels.prepare('SELECT DISTINCT version FROM channel').all()).toEqual([{ version: 2 }]);
		expect(rowsOf(ledger, 'SELECT DISTINCT version FROM result')).toHaveLength(2);
		expect(programmeRows(ledger)[0]).toMatchObject({
			observedM: 30_000,
			counted: { confirmed: 1, rejected: 0, unreviewed: 0 }
		});
		expect(switchVersionWhenComplete(ledger)).toBe(false);
	});

	it('keeps verdicts for events that moved a little, and names those that lost theirs', async () => {
		const test = await reviewedLedger();
		const { ledger, holder, rideIds } = test;
		version.ANALYSIS_VERSION = 2;
		for (const derivation of listDerivations(ledger))
			saveDerivation(
				ledger,
				holder,
				derivation,
				analysedFile({ analysisVersion: 2, events: [slipAt(101.5)] })
			);
		switchVersionWhenComplete(ledger);
		expect(rideView(ledger, rideIds[0])!.eventList).toMatchObject([{ verdict: { verdict: 'confirmed' } }]);
		const [{ detail }] = rowsOf(ledger, "SELECT detail FROM trail WHERE action = 'changed over'");
		expect(JSON.parse(String(detail))).toEqual({ before: 1, verdictsWithoutEvent: [2] });
		expect(rowsOf(ledger, 'SELECT 1 FROM verdict WHERE superseded_ms IS NULL')).toHaveLength(2);
	});

	it('carries a verdict over that was given while it was being computed', async () => {
		const test = await reviewedLedger();
		const { ledger, holder, actor, rideIds } = test;
		version.ANALYSIS_VERSION = 2;
		const events = [slipAt(100), slipAt(200)];
		for (const derivation of listDerivations(ledger))
			saveDerivation(ledger, holder, derivation, analysedFile({ analysisVersion: 2, events }));
		const [, second] = rideView(ledger, rideIds[0])!.eventList;
		recordVerdict(ledger, actor, second.id, { verdict: 'confirmed' });
		switchVersionWhenComplete(ledger);
		expect(rideView(ledger, rideIds[0])!.eventList.map(({ verdict }) => verdict?.verdict)).toEqual([
			'confirmed',
			'confirmed'
		]);
	});

	it('leaves a ride out that it cannot analyse, instead of waiting for it for ever', async () => {
		const test = await reviewedLedger();
		const { ledger, holder, rideIds } = test;
		version.ANALYSIS_VERSION = 2;
		const [first, second] = listDerivations(ledger);
		saveDerivation(ledger, holder, first, analysedFile({ analysisVersion: 2 }));
		failDerivation(ledger, (beginDerivation(ledger, second), second), 'not a ride any more');
		expect(switchVersionWhenComplete(ledger)).toBe(true);
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
		expect(switchVersionWhenComplete(test.ledger)).toBe(true);
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
