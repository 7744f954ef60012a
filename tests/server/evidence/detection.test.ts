import { describe, expect, it } from 'vitest';
import { buildAgainstBuild } from '$lib/server';
import { detectionFactor } from '$lib/server/evidence/detectionFactor';
import type { FoundTally } from '$lib/server/evidence/foundTallies';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { addRide, freshLedger, slipAt, withHardware } from '../testLedger';
import { cell, ride, slip } from './rides';

const SLIPS = { unit: 'slips', unreviewed: 'slip' } as const;
const tally = (change: Partial<FoundTally>): FoundTally => ({
	sizeCrankDeg: 90,
	torqueGroup: 2,
	put: 100,
	found: 80,
	...change
});

describe('detectionFactor', () => {
	it('takes each slip at its own size and torque', () => {
		const one = ride({
			events: [slip({ overrunCrankDeg: 100, torqueBin: 5 }), slip({ overrunCrankDeg: 400, torqueBin: 7 })]
		});
		const found = detectionFactor(
			[one],
			new Map([[one.rideId, [tally({}), tally({ sizeCrankDeg: 180, torqueGroup: 3, found: 50 })]]]),
			SLIPS
		)!;
		// 1 / 0.8 for the first, 1 / 0.5 for the second
		expect(found.factor).toBeCloseTo((1 / 0.8 + 1 / 0.5) / 2, 12);
		expect(found).toMatchObject({ put: 200, found: 130, ridesTested: 1, rides: 1 });
		expect(found.lower).toBeGreaterThanOrEqual(1);
		expect(found.upper).toBeGreaterThan(found.factor);
	});

	it('weighs rides by their observed distance, not by how many slips were put into them', () => {
		const good = ride({ observedM: 30_000 });
		const bad = ride({ observedM: 10_000 });
		const found = detectionFactor(
			[good, bad],
			new Map([
				[good.rideId, [tally({ put: 40, found: 40 })]],
				[bad.rideId, [tally({ put: 200, found: 0 })]]
			]),
			SLIPS
		)!;
		expect(found.factor).toBeCloseTo(40 / 30, 12);
	});

	it('of no counted slip takes one of the reference size, at the torques that were observed', () => {
		const quiet = ride({ cells: [cell(5, 30_000), cell(7, 10_000)] });
		const found = detectionFactor(
			[quiet],
			new Map([[quiet.rideId, [tally({ found: 100 }), tally({ torqueGroup: 3, found: 50 })]]]),
			SLIPS
		)!;
		expect(found.factor).toBeCloseTo((3 + 2) / 4, 12);
	});

	it('corrects nothing while fewer than 50 slips were put in', () => {
		const one = ride({});
		expect(
			detectionFactor([one], new Map([[one.rideId, [tally({ put: 49, found: 40 })]]]), SLIPS)
		).toBeNull();
		expect(detectionFactor([], new Map(), SLIPS)).toBeNull();
	});
});

it('Rates and ratios are corrected only when asked, and the counts stay what was found', async () => {
	const test = freshLedger();
	const { buildId } = withHardware(test);
	const rideId = await addRide(test, { events: [slipAt(100), slipAt(500)] });
	const { database } = test.ledger;
	database
		.prepare(`INSERT INTO insertion_test VALUES (?, ?, 1, 1, 100, 80, 0, NULL, 0)`)
		.run(rideId, ANALYSIS_VERSION);
	database
		.prepare(`INSERT INTO insertion_tally VALUES (?, ?, 0, 90, 'steady', 30, 1, 100, 80)`)
		.run(rideId, ANALYSIS_VERSION);
	const builds = [{ id: buildId, name: 'Old' }];
	const told = (detection: 'as found' | 'corrected') =>
		buildAgainstBuild(test.ledger, builds, { unit: 'slips', shown: 'found', detection }).builds[0];
	expect(told('as found').corrected).toBeNull();
	const { corrected, worst } = told('corrected');
	expect(worst.pooled.count).toBe(2);
	expect(corrected!.factor).toBeCloseTo(1.25, 12);
	expect(corrected!.worst.value).toBeCloseTo(1.25 * worst.pooled.ratePerHundredKm!, 9);
	expect(corrected!.worst.upper!).toBeGreaterThan(1.25 * worst.pooled.upperPerHundredKm!);
});
