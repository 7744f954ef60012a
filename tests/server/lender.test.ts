import { describe, expect, it } from 'vitest';
import { buildAgainstBuild, createBuild, fitBuild, programmeRows } from '$lib/server';
import { buildsBefore, firstLender, type Descended } from '$lib/server/rates/lender';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from './testLedger';
import { exposed } from './evidence/rides';

describe('buildsBefore', () => {
	const build = (id: number, revisionOf: number | null, copiedFrom: number | null = null): Descended => ({
		id,
		revisionOf,
		copiedFrom
	});

	it('goes back by revision, else by copy, nearest first', () => {
		const builds = [build(1, null), build(2, null, 1), build(3, 2, 1)];
		expect(buildsBefore(builds, 3).map(({ id }) => id)).toEqual([2, 1]);
		expect(buildsBefore(builds, 1)).toEqual([]);
	});

	it('ends where somebody made a ring of them, and where a build is gone', () => {
		const ring = [build(1, 3), build(2, 1), build(3, 2)];
		expect(buildsBefore(ring, 3).map(({ id }) => id)).toEqual([2, 1]);
		expect(buildsBefore([build(2, 9)], 2)).toEqual([]);
	});
});

describe('firstLender', () => {
	it('passes over builds with too few slips to show whether they cluster', () => {
		const bursts = Array.from({ length: 10 }, (_, ride) => ({ count: ride % 2 ? 5 : 0, exposure: 1 }));
		const units = { Near: bursts.slice(0, 3), Far: bursts };
		const builds = [{ name: 'Near' as const }, { name: 'Far' as const }];
		const lender = firstLender(builds, ({ name }) => units[name]);
		expect(lender?.name).toBe('Far');
		// variance / mean of 5 and 0 in turn
		expect(lender?.dispersion).toBeGreaterThan(1);
		expect(firstLender(builds.slice(0, 1), ({ name }) => units[name])).toBeUndefined();
	});
});

describe('the interval of a build with few slips', () => {
	it('is the same on the programme and in a comparison, whoever is the reference', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const { wheelId, buildId: oldId } = withHardware(test);
		const newId = createBuild(ledger, actor, { name: 'New', description: 'harder spring' });
		ledger.database.prepare('UPDATE build SET copied_from = ? WHERE id = ?').run(oldId, newId);
		fitBuild(ledger, actor, {
			wheelId,
			buildId: newId,
			from: new Date(START_MS + 500 * HOUR_MS).toISOString()
		});
		const exposure = { cells: [exposed(30, 20_000)], hours: [], marks: [] };
		// ten rides of the old build with five slips or none, one of the new build with one slip
		for (let ride = 0; ride < 10; ride++) {
			const events = ride % 2 ? [100, 200, 300, 400, 500].map((startS) => slipAt(startS)) : [];
			await addRide(test, { startedAtMs: START_MS + ride * 24 * HOUR_MS, events, exposure });
		}
		await addRide(test, { startedAtMs: START_MS + 600 * HOUR_MS, events: [slipAt(100)], exposure });

		const row = programmeRows(ledger).find(({ id }) => id === newId)!.counted.worstCase;
		expect(row).toMatchObject({ count: 1, borrowedFrom: 'Old', assumesSingleEvents: false });
		const old = programmeRows(ledger).find(({ id }) => id === oldId)!;
		const builds = [
			{ id: oldId, name: old.name },
			{ id: newId, name: 'New' }
		];
		for (const order of [builds, builds.toReversed()]) {
			const told = buildAgainstBuild(ledger, order, { unit: 'slips', shown: 'found' }).builds;
			const of = (id: number) => told.find((build) => build.id === id)!.worst.pooled;
			expect(of(newId)).toEqual(row);
			expect(of(oldId)).toEqual(old.counted.worstCase);
		}
	});
});
