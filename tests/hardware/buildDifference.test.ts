import { describe, expect, it } from 'vitest';
import type { BillEntry, BillPart } from '$lib/hardware/bill';
import { partMark } from '$lib/hardware/bill';
import { buildDifference } from '$lib/hardware/buildDifference';
import { pairBillEntries } from '$lib/hardware/pairBillEntries';
import { torqueDifference } from '$lib/hardware/torqueDifference';

const part = (change: Partial<BillPart> = {}): BillPart => ({
	number: 'RR-24',
	revision: 'A',
	batch: '',
	name: 'ring',
	kind: 'ratchet ring',
	finish: '',
	...change
});
const line = (change: Partial<BillPart> = {}, rest: Partial<BillEntry> = {}): BillEntry => ({
	part: part(change),
	quantity: 1,
	serial: '',
	note: '',
	...rest
});
const spacer = (number: string, rest: Partial<BillEntry> = {}) =>
	line({ number, kind: 'spacer', name: 'spacer' }, rest);

/** change and changed fields of each line, as a reader sees them */
const told = (before: BillEntry[], after: BillEntry[]) =>
	buildDifference(before, after).map(({ change, fields }) => [
		change,
		...fields.map(({ field, before: was, after: is }) => `${field}: ${was} -> ${is}`)
	]);

describe('buildDifference', () => {
	it('tells a changed revision, batch, serial, quantity and finish of one part number', () => {
		const before = [line({ batch: '7' }, { serial: 'S1', quantity: 2 })];
		const after = [line({ revision: 'B', batch: '8', finish: 'hand-fitted' }, { serial: 'S2' })];
		expect(told(before, after)).toEqual([
			[
				'changed',
				'revision: A -> B',
				'batch: 7 -> 8',
				'finish:  -> hand-fitted',
				'quantity: 2 -> 1',
				'serial: S1 -> S2'
			]
		]);
	});

	it('finds no difference between a bill and the same lines in another order or case', () => {
		const before = [line(), spacer('SP-10'), spacer('SP-25')];
		const after = [spacer('sp-25'), line({ number: 'rr-24' }), spacer('SP-10')];
		expect(told(before, after)).toEqual([['same'], ['same'], ['same']]);
	});

	it('lets the only part of a kind replace the only one of that kind, and nothing else', () => {
		expect(told([line()], [line({ number: 'RR-36', revision: '' })])).toEqual([
			['replaced', 'part: RR-24, revision A -> RR-36']
		]);
		expect(told([spacer('SP-10')], [spacer('SP-20'), spacer('SP-25')])).toEqual([
			['added'],
			['added'],
			['removed']
		]);
		const screw = (number: string) => line({ number, kind: 'other' });
		expect(told([screw('M4')], [screw('oil')])).toEqual([['added'], ['removed']]);
	});

	it('puts what was removed after the lines of the build', () => {
		expect(told([spacer('SP-10'), line()], [line()])).toEqual([['same'], ['removed']]);
		expect(told([], [line()])).toEqual([['added']]);
		expect(told([line()], [])).toEqual([['removed']]);
		expect(told([], [])).toEqual([]);
	});
});

describe('pairBillEntries', () => {
	it('follows a piece by its serial before it looks at revision and batch', () => {
		const before = [line({ batch: '1' }, { serial: 'A' }), line({ batch: '2' }, { serial: 'B' })];
		const after = [line({ batch: '1' }, { serial: 'B' }), line({ batch: '2' }, { serial: 'A' })];
		expect(pairBillEntries(before, after)).toEqual([
			[before[1], after[0]],
			[before[0], after[1]]
		]);
	});

	it('uses each line once, however often a number stands in a bill', () => {
		const before = [spacer('SP-10')];
		const after = [spacer('SP-10'), spacer('SP-10')];
		expect(pairBillEntries(before, after)).toEqual([
			[before[0], after[0]],
			[null, after[1]]
		]);
	});

	it('keeps every line of both sides exactly once, whatever the bills (600 seeded bills)', () => {
		let state = 12345;
		const next = (below: number) => (state = (state * 48271) % 2147483647) % below;
		const bill = () =>
			Array.from({ length: next(6) }, () =>
				line(
					{ number: `N${next(3)}`, revision: 'ABC'[next(3)], kind: next(2) ? 'spring' : 'spacer' },
					{ serial: next(3) ? '' : `S${next(2)}` }
				)
			);
		for (let round = 0; round < 300; round++) {
			const [before, after] = [bill(), bill()];
			const pairs = pairBillEntries(before, after);
			const sides = (side: 0 | 1) => pairs.map((pair) => pair[side]).filter((entry) => entry !== null);
			expect(new Set(sides(0))).toEqual(new Set(before));
			expect(sides(0)).toHaveLength(before.length);
			expect(sides(1)).toEqual(after);
		}
	});
});

describe('torqueDifference', () => {
	const joint = (name: string, wantedNm: number | null, recordedNm: number | null = null) => ({
		joint: name,
		wantedNm,
		recordedNm
	});
	const changes = (before: ReturnType<typeof joint>[], after: ReturnType<typeof joint>[]) =>
		torqueDifference(before, after).map(({ joint: name, change }) => [name, change]);

	it('tells joints apart by name and says what is wanted or was done otherwise', () => {
		const before = [joint('Axle', 12, 12), joint('Lockring', 40, 41), joint('Ring', 80)];
		const after = [joint('lockring', 45), joint('axle', 12, 13), joint('Cap', 3)];
		expect(changes(before, after)).toEqual([
			['lockring', 'changed'],
			['axle', 'changed'],
			['Cap', 'added'],
			['Ring', 'removed']
		]);
	});

	it('takes a torque that nobody wrote down for no change', () => {
		expect(changes([joint('Axle', 12, 12)], [joint('Axle', 12)])).toEqual([['Axle', 'same']]);
	});
});

describe('partMark', () => {
	it('names number, revision and batch, and only what is written on the part', () => {
		expect(partMark(part({ batch: '12' }))).toBe('RR-24, revision A, batch 12');
		expect(partMark(part({ revision: '' }))).toBe('RR-24');
	});
});
