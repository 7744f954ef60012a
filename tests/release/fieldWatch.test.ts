import { describe, expect, it } from 'vitest';
import { fieldWatch, type FieldEvidence } from '$lib/release/fieldWatch';
import { CRITERIA, WORDS } from './testWords';

const QUIET: FieldEvidence = {
	rides: 20,
	observedM: 900_000,
	slipsAtObservedM: [],
	confirmedAtObservedM: [],
	unreviewed: 0,
	largestConfirmedCrankDeg: 0,
	reported: 0,
	harmed: 0
};
const watch = (change: Partial<FieldEvidence>) => fieldWatch(CRITERIA, { ...QUIET, ...change }, WORDS);
/** CRITERIA allow 2 per 1000 km: five slips on 250 km are ten times that */
const FIVE = [50_000, 100_000, 150_000, 200_000, 250_000];

describe('fieldWatch', () => {
	it('does not alarm while the field keeps the rate, and never says that none will happen', () => {
		const quiet = watch({});
		expect(quiet).toMatchObject({ state: 'no alarm', reasons: [], lowerPerThousandKm: 0 });
		expect(quiet.sentence).toContain('that is not "none will happen"');
		expect(quiet.sentence).toContain('at most 5 %');
		expect(watch({ slipsAtObservedM: [400_000], confirmedAtObservedM: [400_000] }).state).toBe('no alarm');
	});

	it('alarms when confirmed slips speak against the rate of the release, and says by how much at least', () => {
		const { state, reasons, lowerPerThousandKm } = watch({
			slipsAtObservedM: FIVE,
			confirmedAtObservedM: FIVE
		});
		expect(state).toBe('alarm');
		expect(reasons[0]).toContain('5 confirmed slips on 900 km observed: more than 2 per 1000 km allow');
		// Garwood 1936: 5 events, one-sided 95 %: 1.970
		expect(lowerPerThousandKm).toBeCloseTo(1.97 / 0.9, 2);
	});

	it('asks for a review first where only unreviewed events would contradict the release', () => {
		const { state, reasons } = watch({ slipsAtObservedM: FIVE, unreviewed: 5 });
		expect(state).toBe('look');
		expect(reasons).toEqual(['Review 5 events: with them as slips the field contradicts the release.']);
	});

	it('alarms at once for a fall or a slip as large as the stop rule names, whatever the rate', () => {
		expect(watch({ reported: 1, harmed: 1 })).toMatchObject({ state: 'alarm' });
		expect(watch({ largestConfirmedCrankDeg: 360 })).toMatchObject({ state: 'alarm' });
		expect(watch({ largestConfirmedCrankDeg: 359 })).toMatchObject({ state: 'no alarm' });
	});

	it('wants a reported slip looked at, though nobody knows how many km it stands for', () => {
		expect(watch({ reported: 2 })).toMatchObject({ state: 'look' });
	});

	it('says that nothing came from the field yet instead of "no alarm"', () => {
		expect(watch({ rides: 0, observedM: 0 }).state).toBe('nothing yet');
	});
});
