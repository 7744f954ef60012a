import { describe, expect, it } from 'vitest';
import { rideView, withdrawRide } from '$lib/server';
import { halfFound } from '$lib/server/insertions/halfFound';
import { insertionStage } from '$lib/server/insertions/insertionView';
import { listDerivations, saveDerivation } from '$lib/server/queue/derivations';
import { MOST_ATTEMPTS } from '$lib/server/queue/importQueue';
import {
	beginInsertion,
	failInsertion,
	nextInsertion,
	releaseInsertion,
	saveInsertion
} from '$lib/server/queue/insertionQueue';
import { newHolder } from '$lib/server/queue/lease';
import type { InsertionResult, InsertionTally } from '$lib/slip/insertionTest';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
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

const tally = (change: Partial<InsertionTally>): InsertionTally => ({
	sizeCrankDeg: 90,
	place: 'steady',
	torqueFromNm: 8,
	observed: true,
	put: 10,
	found: 9,
	...change
});

function resultOf(tallies: InsertionTally[], change: Partial<InsertionResult> = {}): InsertionResult {
	return {
		analysisVersion: ANALYSIS_VERSION,
		seed: 7,
		passes: 3,
		put: tallies.reduce((sum, { put }) => sum + put, 0),
		found: tallies.reduce((sum, { found }) => sum + found, 0),
		observedChangeM: 12,
		notRun: null,
		tallies,
		probes: [],
		...change
	};
}

async function twoRides() {
	const test = freshLedger();
	const { wheelId } = withHardware(test);
	const rideIds = [
		await addRide(test, { events: [slipAt(100)] }, { wheelId }),
		await addRide(test, { startedAtMs: START_MS + 5 * HOUR_MS }, { wheelId })
	];
	return { ...test, wheelId, rideIds };
}

describe('halfFound', () => {
	const sizes = (found: number[]) =>
		[30, 45, 60, 90, 120, 180].map((crankDeg, k) => ({ crankDeg, put: 20, found: found[k] }));

	it('is the size at which the curve passes one half: symmetric counts around 60 on the logarithm give 60', () => {
		// 30 and 120, 40 and 90 lie as far from 60
		const symmetric = [
			{ crankDeg: 30, put: 20, found: 3 },
			{ crankDeg: 40, put: 20, found: 7 },
			{ crankDeg: 90, put: 20, found: 13 },
			{ crankDeg: 120, put: 20, found: 17 }
		];
		const half = halfFound(symmetric, 0.95)!;
		expect(half.crankDeg).toBeCloseTo(60, 6);
		expect(half.lower).toBeGreaterThan(30);
		expect(half.lower).toBeLessThan(60);
		expect(half.upper).toBeLessThan(120);
		expect(half.lower * half.upper).toBeCloseTo(3600, 4);
	});

	it('is not told where all or none were found, where the size plays no part, or beyond what was put in', () => {
		expect(halfFound(sizes([20, 20, 20, 20, 20, 20]), 0.95)).toBeNull();
		expect(halfFound(sizes([0, 0, 0, 0, 0, 0]), 0.95)).toBeNull();
		expect(halfFound(sizes([10, 9, 10, 11, 10, 10]), 0.95)).toBeNull();
		expect(halfFound(sizes([0, 0, 0, 1, 2, 4]), 0.95)).toBeNull();
		expect(halfFound([], 0.95)).toBeNull();
	});
});

describe('putting slips into rides that stand', () => {
	it('takes the oldest ride first, each once, the same seed for the same file', async () => {
		const { ledger, holder, rideIds } = await twoRides();
		const first = nextInsertion(ledger, [])!;
		expect(first).toMatchObject({ rideId: rideIds[0], bike: {} });
		expect(nextInsertion(ledger, [])?.seed).toBe(first.seed);
		const second = nextInsertion(ledger, [first.rideId])!;
		expect(second.rideId).toBe(rideIds[1]);
		expect(second.seed).not.toBe(first.seed);
		for (const insertion of [first, second]) {
			beginInsertion(ledger, insertion);
			saveInsertion(ledger, holder, insertion, resultOf([tally({})]));
		}
		expect(nextInsertion(ledger, [])).toBeNull();
		expect(rowsOf(ledger, 'SELECT 1 FROM insertion_attempt')).toEqual([]);
	});

	it('is told with exact limits, by size, place and torque, observed and elsewhere apart', async () => {
		const { ledger, holder, rideIds } = await twoRides();
		expect(insertionStage(ledger, rideIds[0], ANALYSIS_VERSION)).toEqual({ stage: 'to come' });
		const tallies = [
			tally({ sizeCrankDeg: 30, put: 4, found: 0 }),
			tally({ put: 20, found: 18 }),
			tally({ place: 'burst', torqueFromNm: 30, put: 10, found: 9 }),
			tally({ torqueFromNm: null, observed: false, put: 5, found: 1 })
		];
		saveInsertion(ledger, holder, nextInsertion(ledger, [])!, resultOf(tallies));
		const told = insertionStage(ledger, rideIds[0], ANALYSIS_VERSION);
		if (told?.stage !== 'done') throw new Error('not done');
		const { sizes, places, torques } = told.view;
		expect(sizes.map(({ crankDeg }) => crankDeg)).toEqual([30, 90]);
		expect(sizes[1].observed).toMatchObject({ put: 30, found: 27, share: 0.9 });
		// none of 4: 1 - 0.025^(1/4); 27 of 30: R's binom.test, 0.7347 to 0.9789 (from memory, to four digits)
		expect(sizes[0].observed.upper).toBeCloseTo(1 - 0.025 ** 0.25, 10);
		expect(sizes[1].observed.lower).toBeCloseTo(0.7347, 4);
		expect(sizes[1].observed.upper).toBeCloseTo(0.9789, 4);
		expect(sizes[1].elsewhere).toMatchObject({ put: 5, found: 1 });
		expect(places.find(({ place }) => place === 'burst')?.observed).toMatchObject({ put: 10, found: 9 });
		expect(places.find(({ place }) => place === 'start')?.observed).toMatchObject({ put: 0, share: null });
		expect(torques.map(({ fromNm, toNm }) => [fromNm, toNm])).toEqual([
			[8, 12],
			[30, 40],
			[null, null]
		]);
	});

	it('changes no count of the ride', async () => {
		const { ledger, holder, rideIds } = await twoRides();
		const before = rideView(ledger, rideIds[0]);
		saveInsertion(ledger, holder, nextInsertion(ledger, [])!, resultOf([tally({})]));
		expect(rideView(ledger, rideIds[0])).toEqual(before);
	});

	it('says why nothing could be put in, and why it failed', async () => {
		const { ledger, holder, rideIds } = await twoRides();
		const first = nextInsertion(ledger, [])!;
		saveInsertion(ledger, holder, first, resultOf([], { notRun: 'no cadence was recorded' }));
		expect(insertionStage(ledger, rideIds[0], ANALYSIS_VERSION)).toEqual({
			stage: 'none',
			reason: 'no cadence was recorded'
		});
		const second = nextInsertion(ledger, [])!;
		beginInsertion(ledger, second);
		failInsertion(ledger, second, 'the disk is full');
		expect(nextInsertion(ledger, [])).toBeNull();
		expect(insertionStage(ledger, rideIds[1], ANALYSIS_VERSION)).toEqual({
			stage: 'none',
			reason: 'the disk is full'
		});
	});

	it('gives a ride up that ended the program too often, not one whose attempts a stop broke off', async () => {
		const { ledger, rideIds } = await twoRides();
		const first = nextInsertion(ledger, [])!;
		for (let stop = 0; stop < 2 * MOST_ATTEMPTS; stop++) {
			beginInsertion(ledger, first);
			releaseInsertion(ledger, first);
		}
		expect(nextInsertion(ledger, [])?.rideId).toBe(rideIds[0]);
		for (let end = 0; end < MOST_ATTEMPTS; end++) beginInsertion(ledger, first);
		expect(nextInsertion(ledger, [])?.rideId).toBe(rideIds[1]);
	});

	it('writes nothing without the lease, nor for a result that was replaced meanwhile', async () => {
		const { ledger, holder, wheelId, rideIds } = await twoRides();
		const first = nextInsertion(ledger, [])!;
		saveInsertion(ledger, newHolder(), first, resultOf([tally({})]));
		expect(rowsOf(ledger, 'SELECT 1 FROM insertion_test')).toEqual([]);
		ledger.database.prepare('UPDATE wheel SET circumference_m = 2.2 WHERE id = ?').run(wheelId);
		const [derivation] = listDerivations(ledger);
		const file = analysedFile({ events: [slipAt(100)] });
		saveDerivation(ledger, holder, derivation, {
			...file,
			detail: { ...file.detail, bike: derivation.bike }
		});
		saveInsertion(ledger, holder, first, resultOf([tally({})]));
		expect(rowsOf(ledger, 'SELECT 1 FROM insertion_test')).toEqual([]);
		expect(nextInsertion(ledger, [])).toMatchObject({ rideId: rideIds[0], bike: { circumferenceM: 2.2 } });
	});

	it('goes with the result that it belongs to', async () => {
		const { ledger, holder, wheelId } = await twoRides();
		saveInsertion(ledger, holder, nextInsertion(ledger, [])!, resultOf([tally({})]));
		expect(rowsOf(ledger, 'SELECT 1 FROM insertion_tally')).toHaveLength(1);
		ledger.database.prepare('UPDATE wheel SET circumference_m = 2.2 WHERE id = ?').run(wheelId);
		const [derivation] = listDerivations(ledger);
		const file = analysedFile();
		saveDerivation(ledger, holder, derivation, {
			...file,
			detail: { ...file.detail, bike: derivation.bike }
		});
		expect(rowsOf(ledger, 'SELECT 1 FROM insertion_test')).toEqual([]);
		expect(rowsOf(ledger, 'SELECT 1 FROM insertion_tally')).toEqual([]);
	});

	it('leaves withdrawn rides alone', async () => {
		const { ledger, actor, rideIds } = await twoRides();
		withdrawRide(ledger, actor, rideIds[0], 'not our bike');
		expect(nextInsertion(ledger, [])?.rideId).toBe(rideIds[1]);
	});
});
