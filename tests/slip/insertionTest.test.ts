import { beforeAll, describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import { decodeRide } from '$lib/ride/decodeRide';
import type { Ride } from '$lib/ride/ride';
import { analyseRide } from '$lib/slip/analyseRide';
import { insertionTest, type InsertedSlip } from '$lib/slip/insertionTest';
import { insertionPlan, INSERTED_SIZES_DEG } from '$lib/slip/insertionPlan';
import type { InsertionPlace, PossibleOnset } from '$lib/slip/insertionPlaces';
import { seededChance } from '$lib/slip/seededChance';
import { steadyRecords, toRide } from './steadyRide';

/** ride of the invented example workshop, on the hub that slips */
const SAMPLE = new URL('../../sample-rides/2026-04-22-w1-r1.fit', import.meta.url);

describe('insertionPlan', () => {
	const onsets = (from: number, count: number, torqueFromNm: number | null): PossibleOnset[] =>
		Array.from({ length: count }, (_, k) => ({ second: from + k, torqueFromNm }));
	const places: Record<InsertionPlace, PossibleOnset[]> = {
		steady: [...onsets(100, 4000, 8), ...onsets(4100, 40, 30)],
		'near a shift': onsets(5000, 600, 12),
		start: onsets(6000, 600, null),
		burst: onsets(100, 4000, 8)
	};
	const passes = insertionPlan(places, seededChance(3));
	const all = passes.flat();

	it('puts 60 to 122 slips in, in several passes, well apart but for those of one burst', () => {
		expect(all.length).toBeGreaterThanOrEqual(60);
		expect(all.length).toBeLessThanOrEqual(122);
		expect(passes.length).toBeGreaterThan(2);
		for (const pass of passes) {
			for (let k = 1; k < pass.length; k++) {
				const apartS = pass[k].second - pass[k - 1].second;
				const together = pass[k].place === 'burst' && pass[k - 1].place === 'burst' && apartS < 10;
				expect(together || apartS >= 40).toBe(true);
				expect(apartS).toBeGreaterThan(3);
			}
		}
	});

	it('uses every size, the reference size most, and every place', () => {
		const counts = new Map<number, number>();
		for (const { crankDeg } of all) counts.set(crankDeg, (counts.get(crankDeg) ?? 0) + 1);
		expect([...counts.keys()].sort((a, b) => a - b)).toEqual([...new Set(INSERTED_SIZES_DEG)]);
		expect(Math.max(...counts.values())).toBe(counts.get(90));
		expect(new Set(all.map(({ place }) => place)).size).toBe(4);
	});

	it('goes to rare hard torque as often as to common easy torque', () => {
		const steady = all.filter(({ place }) => place === 'steady');
		const hard = steady.filter(({ torqueFromNm }) => torqueFromNm === 30).length;
		// a hundredth of the seconds; they lie within 40 s, so one a pass
		expect(hard).toBeGreaterThanOrEqual(passes.length - 2);
	});

	it('is the same for the same seed and empty where nothing was pressed', () => {
		expect(insertionPlan(places, seededChance(3))).toEqual(passes);
		expect(insertionPlan({ steady: [], 'near a shift': [], start: [], burst: [] }, seededChance(3))).toEqual(
			[]
		);
	});
});

describe('insertionTest', () => {
	let ride: Ride;
	const slips: InsertedSlip[] = [];
	let result: ReturnType<typeof insertionTest>;
	beforeAll(async () => {
		ride = await decodeRide(readFileSync(SAMPLE), 'sample.fit');
		result = insertionTest(ride, {}, 7, (slip) => slips.push(slip));
	});

	it('tells the same for the same seed and something else for another', () => {
		expect(insertionTest(ride, {}, 7)).toEqual(result);
		expect(insertionTest(ride, {}, 8)).not.toEqual(result);
	});

	it('leaves the ride as it was', () => {
		const before = analyseRide(ride, {});
		insertionTest(ride, {}, 7);
		expect(analyseRide(ride, {})).toEqual(before);
	});

	it('finds large slips more often than small ones, and on observed stretches more often than elsewhere', () => {
		const share = (wanted: (slip: InsertedSlip) => boolean) => {
			const those = slips.filter(wanted);
			return those.filter(({ found }) => found).length / those.length;
		};
		expect(share(({ crankDeg }) => crankDeg >= 90)).toBeGreaterThan(
			share(({ crankDeg }) => crankDeg <= 45) + 0.2
		);
		const large = (observed: boolean) => share((slip) => slip.crankDeg >= 60 && slip.observed === observed);
		expect(large(true)).toBeGreaterThan(large(false) + 0.2);
	});

	it('adds up: tallies are the slips that were put in, and none lies near an event of the ride', () => {
		expect(result.put).toBe(slips.length);
		expect(result.found).toBe(slips.filter(({ found }) => found).length);
		expect(result.tallies.reduce((sum, { put }) => sum + put, 0)).toBe(result.put);
		const own = analyseRide(ride, {}).events;
		expect(own.length).toBeGreaterThan(0);
		for (const { second } of slips)
			expect(own.every(({ startS, endS }) => second < startS - 10 || second > endS + 10)).toBe(true);
	});

	it('hardly moves the observed distance: it must not hang on the slips of a ride', () => {
		// 20 to 30 slips a pass: the noise of the seconds around each is learned from
		expect(result.observedChangeM).toBeLessThan(0.02 * analyseRide(ride, {}).observedM);
	});

	it('says why nothing could be put in', () => {
		const records = steadyRecords();
		records.watts.fill(0);
		expect(insertionTest(toRide(records), {}, 1)).toMatchObject({
			put: 0,
			notRun: 'too little was pedalled under load',
			tallies: []
		});
	});
});
