import { describe, expect, it } from 'vitest';
import { countedAgainstExpected } from '$lib/reliability/countedAgainstExpected';
import type { UnitCount } from '$lib/reliability/unitCounts';
import { widestCountedAgainstExpected } from '$lib/reliability/widestCountedAgainstExpected';
import { simulateProgramme } from '../bench/programmes/programme';
import { strataOf } from '../bench/programmes/strataOf';

const outings = (counts: readonly number[]): UnitCount[] => counts.map((count) => ({ count, exposure: 40 }));
const STRATA = [
	{ referenceCount: 25, referenceExposure: 800, count: 2, exposure: 300 },
	{ referenceCount: 0, referenceExposure: 0, count: 0, exposure: 100 }
];

describe('widestCountedAgainstExpected', () => {
	it('is countedAgainstExpected when events come singly on both sides', () => {
		const reference = outings(Array.from({ length: 20 }, (_, i) => (i < 15 ? 1 : 2)));
		const got = widestCountedAgainstExpected(
			STRATA,
			outings([1, 0, 0, 1, 0, 0, 0, 0, 0, 0]),
			reference,
			0.95
		);
		expect(got).toMatchObject(countedAgainstExpected(STRATA, 0.95));
		expect(got).toMatchObject({ countedDispersion: 1, referenceDispersion: 1, assumesSingleEvents: false });
	});

	it('does not let one bad outing of the reference prove a better new side', () => {
		const bad = outings([0, 0, 0, 23, 0, 0, 1, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0]);
		const plain = countedAgainstExpected(STRATA, 0.95);
		const got = widestCountedAgainstExpected(STRATA, outings([1, 0, 1, 0, 0, 0, 0]), bad, 0.95);
		expect(plain.upper).toBeLessThan(1);
		expect(got.upper).toBeGreaterThan(1);
		expect(got.countedDispersion).toBeGreaterThan(10);
	});

	it('says what it assumes when neither side has enough events to show bursts', () => {
		const few = [{ referenceCount: 3, referenceExposure: 200, count: 0, exposure: 150 }];
		const got = widestCountedAgainstExpected(few, outings([0, 0, 0]), outings([1, 0, 2, 0, 0]), 0.95);
		expect(got.assumesSingleEvents).toBe(true);
		expect(got.upper).toBeGreaterThan(0.5);
	});

	it('says nothing for a side without outings', () => {
		expect(widestCountedAgainstExpected([], [], [], 0.95)).toMatchObject({
			ratio: NaN,
			lower: 0,
			upper: Infinity
		});
	});

	it('holds the truth of seeded programmes with bursts and unlike hubs, where plain limits often do not', () => {
		let [held, plain] = [0, 0];
		const conditions = { clustering: 'bursts', hubSpread: 0.7, outings: 12, expectedEvents: 12 } as const;
		for (let seed = 0; seed < 300; seed++) {
			const { reference, fresh } = simulateProgramme(seed, conditions);
			const { strata, truth } = strataOf(reference, fresh);
			const got = widestCountedAgainstExpected(strata, fresh.outings, reference.outings, 0.95);
			if (got.lower <= truth && got.upper >= truth) held++;
			const single = countedAgainstExpected(strata, 0.95);
			if (single.lower <= truth && single.upper >= truth) plain++;
		}
		expect(held / 300).toBeGreaterThan(0.94);
		expect(plain / 300).toBeLessThan(0.9);
	});
});
