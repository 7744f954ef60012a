import { describe, expect, it } from 'vitest';
import {
	actorOf,
	changePart,
	choosePerson,
	createPart,
	listParts,
	partView,
	type PartInput
} from '$lib/server';
import { freshLedger, rowsOf } from './testLedger';

const RING: PartInput = {
	number: 'RR-36',
	revision: 'A',
	name: 'ratchet ring, 36 teeth',
	kind: 'ratchet ring',
	finish: 'as produced',
	pointsOfEngagement: 36,
	lengths: [
		{ what: 'width', nominalMm: 7.5, minusMm: 0.05, plusMm: 0 },
		{ what: 'outer diameter', nominalMm: 32, minusMm: 0.02, plusMm: 0.02 }
	]
};

describe('createPart', () => {
	it('keeps one row a number, revision and batch, with nominal lengths', () => {
		const { ledger, actor } = freshLedger();
		const id = createPart(ledger, actor, RING);
		createPart(ledger, actor, { ...RING, revision: 'B' });
		createPart(ledger, actor, { ...RING, batch: '2' });
		expect(() => createPart(ledger, actor, { ...RING, number: 'rr-36', revision: 'a' })).toThrow(
			'There is a part rr-36, revision a already.'
		);
		expect(listParts(ledger).map(({ mark }) => mark)).toEqual([
			'RR-36, revision A',
			'RR-36, revision A, batch 2',
			'RR-36, revision B'
		]);
		expect(partView(ledger, id)).toMatchObject({
			kind: 'ratchet ring',
			lengths: [{ what: 'outer diameter' }, { what: 'width', nominalMm: 7.5, minusMm: 0.05, plusMm: 0 }],
			others: [{ mark: 'RR-36, revision A, batch 2' }, { mark: 'RR-36, revision B' }]
		});
	});

	it('refuses absurd lengths, negative tolerances, unknown kinds and a length twice, half of nothing saved', () => {
		const { ledger, actor } = freshLedger();
		const length = (change: object) => ({ lengths: [{ what: 'width', nominalMm: 5, ...change }] });
		const wrong: [Partial<PartInput>, RegExp][] = [
			[length({ nominalMm: 0 }), /drawn for "width" must lie between/],
			[length({ nominalMm: 5000 }), /between/],
			[length({ nominalMm: null }), /missing/],
			[length({ minusMm: -0.1 }), /Minus of .+ between 0 and 20 mm/],
			[length({ plusMm: -0.1 }), /Plus of/],
			[length({ minusMm: 5 }), /nothing would be left/],
			[length({ what: '' }), /missing/],
			[
				{
					lengths: [
						{ what: 'a', nominalMm: 1 },
						{ what: 'A', nominalMm: 2 }
					]
				},
				/twice/
			],
			[{ kind: 'flux capacitor' }, /is one of: ratchet ring, /],
			[{ finish: 'polished' }, /as produced, hand-fitted/],
			[{ pointsOfEngagement: 2 }, /between 3 and 720/],
			[{ pointsOfEngagement: 36.5 }, /whole/],
			[{ number: ' ' }, /number is missing/],
			[{ name: 'x'.repeat(121) }, /longer than 120/]
		];
		for (const [change, sentence] of wrong)
			expect(() => createPart(ledger, actor, { ...RING, ...change })).toThrow(sentence);
		for (const table of ['part', 'part_length']) expect(rowsOf(ledger, `SELECT 1 FROM ${table}`)).toEqual([]);
	});
});

describe('changePart', () => {
	it('changes a part that nothing refers to and keeps what it was in the trail', () => {
		const { ledger, actor } = freshLedger();
		const id = createPart(ledger, actor, RING);
		changePart(ledger, actor, id, 1, { ...RING, batch: '7', lengths: [] });
		expect(partView(ledger, id)).toMatchObject({ batch: '7', lengths: [], rowVersion: 2 });
		const [trail] = rowsOf(ledger, "SELECT detail FROM trail WHERE action = 'changed' AND subject = 'part'");
		expect(JSON.parse(String(trail.detail))).toEqual({
			batch: { before: '', after: '7' },
			lengths: { before: 'outer diameter 32 mm (-0.02 +0.02); width 7.5 mm (-0.05 +0)', after: '' }
		});
		changePart(ledger, actor, id, 2, { ...RING, batch: '7', lengths: [] });
		expect(partView(ledger, id)!.rowVersion).toBe(2);
	});

	it('tells the second of two people whose change stands', () => {
		const { ledger, actor } = freshLedger();
		const other = actorOf(choosePerson(ledger, 'Somebody else'));
		const id = createPart(ledger, actor, RING);
		changePart(ledger, other, id, 1, { ...RING, note: 'first' });
		expect(() => changePart(ledger, actor, id, 1, { ...RING, note: 'second' })).toThrow(
			/^P2 has changed this part meanwhile/
		);
		expect(partView(ledger, id)!.note).toBe('first');
	});

	it('refuses the mark of another part', () => {
		const { ledger, actor } = freshLedger();
		createPart(ledger, actor, RING);
		const id = createPart(ledger, actor, { ...RING, revision: 'B' });
		expect(() => changePart(ledger, actor, id, 1, RING)).toThrow('already');
		expect(() => changePart(ledger, actor, 99, 1, RING)).toThrow('no such part');
	});
});
