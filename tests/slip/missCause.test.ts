import { describe, expect, it } from 'vitest';
import { FEATURE_NAMES } from '$lib/slip/candidateFeatures';
import { causeTable } from '../bench/training/causeTable';
import { missCause, surroundings } from '../bench/training/missCause';
import type { TrainingPart } from '../bench/training/trainingRides';

const CALM = {
	'missing records near': 0,
	'size of step': 0,
	'seconds since rest': 60,
	'least power of before': 0.4
};
const row = (changed: Partial<typeof CALM> = {}) => {
	const features = { ...CALM, ...changed };
	return Float64Array.from(FEATURE_NAMES, (name) =>
		name in features ? features[name as keyof typeof CALM] : NaN
	);
};
const slip = (t0: number) => ({ t0, t1: t0 + 0.3, kind: 'slip', crankDeg: 90 });
const seen = (startS: number[], sizeDeg: number[], rows = startS.map(() => row())) => ({
	startS,
	sizeDeg,
	rows
});

describe('missCause', () => {
	it('says that nothing was there to be scored, or nothing large enough', () => {
		expect(missCause(slip(100), seen([90], [80]), [5], 2)).toBe('no candidate');
		expect(missCause(slip(100), seen([101], [40]), [5], 2)).toBe('too small to be reported');
	});

	it('says that an excess that was reported answers for a slip beside it', () => {
		expect(missCause(slip(100), seen([101, 102], [80, 80]), [-1, 2.1], 2)).toBe(
			'told as one with a neighbour'
		);
	});

	it('goes by the surroundings of the strongest candidate that was too weak', () => {
		const rows = [row({ 'seconds since rest': 2 }), row({ 'size of step': 0.1 })];
		expect(missCause(slip(100), seen([99, 101], [80, 80], rows), [1.5, 1], 2)).toBe('pick-up');
		expect(missCause(slip(100), seen([99, 101], [80, 80], rows), [1, 1.5], 2)).toBe('change of gear');
	});
});

describe('surroundings', () => {
	it('names what is there, missing records first', () => {
		expect(surroundings(row())).toBe('none of these');
		expect(surroundings(row({ 'least power of before': 0.9 }))).toBe('power kept');
		expect(surroundings(row({ 'missing records near': 1, 'size of step': 0.1 }))).toBe('records missing');
	});
});

describe('causeTable', () => {
	it('counts a miss in a slipping ride and a false alarm in a ride without slips, each once', () => {
		const part = (events: ReturnType<typeof slip>[], startS: number[]) =>
			({
				...seen(
					startS,
					startS.map(() => 80)
				),
				events,
				km: 10,
				overrunDeg: startS.map(() => 80),
				origin: 'real',
				asRecorded: true
			}) as unknown as TrainingPart;
		const table = causeTable(
			[
				{ part: part([slip(100), slip(300)], [100, 300]), logOdds: [3, 1] },
				{ part: part([], [50, 70]), logOdds: [3, -1] }
			],
			2
		);
		expect(table[0]).toBe('| cause | simulated: missed of 0 | false | real: missed of 2 | false |');
		expect(table.at(-1)).toBe('| none of these | 0 | 0 | 1 | 1 |');
		expect(table[2]).toBe('| told as one with a neighbour | 0 | 0 | 0 | 0 |');
	});
});
