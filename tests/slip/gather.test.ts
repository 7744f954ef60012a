import { describe, expect, it } from 'vitest';
import { random } from '../../sample-rides/generator/random';
import { gather } from '../bench/training/gather';
import { insertSlips } from '../bench/training/insertSlips';
import { CIRCUMFERENCE_M, steadyRecords, toRide } from './steadyRide';

const slipped = insertSlips(toRide(steadyRecords(4)), 60, random(9));
const labelled = {
	name: 'made up',
	group: 'made up',
	...slipped,
	bike: { circumferenceM: CIRCUMFERENCE_M },
	km: 10
};

describe('gather', () => {
	const all = gather(labelled);

	it('keeps what is wanted as it is among all candidates: features, place, sizes and truth side by side', () => {
		const early = gather(labelled, false, (truth, startS) => truth >= 0 && startS < 600);
		const expected = all.truth.flatMap((truth, i) => (truth >= 0 && all.startS[i] < 600 ? [i] : []));
		expect(expected.length).toBeGreaterThan(3);
		expect(expected.length).toBeLessThan(all.truth.length);
		expect(early.truth).toEqual(expected.map((i) => all.truth[i]));
		expect(early.startS).toEqual(expected.map((i) => all.startS[i]));
		expect(early.sizeDeg).toEqual(expected.map((i) => all.sizeDeg[i]));
		expect(early.overrunDeg).toEqual(expected.map((i) => all.overrunDeg[i]));
		expect(early.rows).toEqual(expected.map((i) => all.rows[i]));
	});

	it('leaves one candidate to a slip, whichever candidates are wanted', () => {
		const slips = all.truth.filter((truth) => truth >= 0);
		expect(slips.length).toBeGreaterThan(8);
		expect(new Set(slips).size).toBe(slips.length);
		expect(gather(labelled, false, (truth) => truth >= 0).truth).toEqual(slips);
	});
});
