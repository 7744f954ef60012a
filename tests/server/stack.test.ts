import { describe, expect, it } from 'vitest';
import {
	addStack,
	changeStack,
	createBuild,
	hardwareLimits,
	listSpacers,
	setHardwareLimits,
	stackPage,
	stockSpacers,
	withdrawStack,
	type StackElementInput,
	type StackInput
} from '$lib/server';
import { copyBuild } from '$lib/server/hardware/copyBuild';
import { addRide, freshLedger, rowsOf, withHardware, type TestLedger } from './testLedger';

const ELEMENTS: StackElementInput[] = [
	{ label: 'left end cap', side: 'left', nominalMm: 12, minusMm: 0.05, plusMm: 0.05, measuredMm: 12.01 },
	{ label: 'shell', side: 'hub', nominalMm: 96, minusMm: 0.1, plusMm: 0.1, measuredMm: 96.02 },
	{ label: 'freehub body', side: 'right', nominalMm: 30, minusMm: 0.05, plusMm: 0.05, measuredMm: 29.99 },
	{ label: 'right end cap', side: 'right', nominalMm: 3, minusMm: 0.05, plusMm: 0.05, measuredMm: 3 },
	{ label: 'pawl width', side: 'inside the hub', nominalMm: 6, inEngagement: 1 },
	{ label: 'shim at the ring', side: 'inside the hub', nominalMm: 0.25, inEngagement: -1, inEndFloat: -1 },
	{ label: 'room between the bearings', side: 'inside the hub', nominalMm: 0.3, inEndFloat: 1 }
];
const stack = (variant: string, more: Partial<StackInput> = {}): StackInput => ({
	variant,
	overLocknutMm: 142,
	elements: ELEMENTS,
	...more
});

function withBuild() {
	const test = freshLedger();
	const buildId = createBuild(test.ledger, test.actor, { name: 'New', description: '' });
	return { ...test, buildId };
}
const only = ({ ledger }: TestLedger, buildId: number) => stackPage(ledger, buildId).stacks[0];

describe('a stack of a build', () => {
	it('comes to its measured total, and the drawer gives the fewest spacers for what is missing', () => {
		const test = withBuild();
		stockSpacers(test.ledger, test.actor, { thicknessMm: 1, count: 2 }, null);
		stockSpacers(test.ledger, test.actor, { thicknessMm: 0.5, count: 1 }, null);
		addStack(test.ledger, test.actor, test.buildId, stack('11-speed body'));
		const view = only(test, test.buildId);
		expect(view.sums.total.measuredMm).toBeCloseTo(141.02, 9);
		expect(view.spacers?.neededMm).toBeCloseTo(0.98, 9);
		expect(view.spacers?.from).toBe('measured');
		expect(view.spacers?.choice?.spacers).toEqual([{ thicknessMm: 1, count: 1 }]);
		// by the spacer that the drawer gives, not by what was missing
		expect(view.spacers?.rimShiftMm).toEqual({ left: 0.5, right: -0.5 });
		expect(view.sums.engagementDepth?.drawn.nominalMm).toBeCloseTo(5.75, 9);
		expect(view.sums.endFloat?.drawn.nominalMm).toBeCloseTo(0.05, 9);
		expect(view.warnings.map(({ code }) => code)).toEqual(['too narrow']);
	});

	it('stands beside another variant of the same build, and the rim moves by half of what the left gains', () => {
		const test = withBuild();
		const first = addStack(test.ledger, test.actor, test.buildId, stack('first', { rimOffsetMm: 0.2 }));
		const elements = [
			...ELEMENTS.map((element) =>
				element.label === 'freehub body' ? { ...element, nominalMm: 28, measuredMm: 27.99 } : element
			),
			{ label: 'spacer', side: 'left', nominalMm: 2, measuredMm: 2 }
		];
		addStack(test.ledger, test.actor, test.buildId, stack('second', { dishedOnId: first, elements }));
		const [, second] = stackPage(test.ledger, test.buildId).stacks;
		// 2 mm taken from the right and 2 mm added on the left: as if moved, at equal width
		expect(second.rim.shiftMm).toBeCloseTo(2, 9);
		expect(second.rim.offsetMm).toBeCloseTo(2.2, 9);
		expect(second.rim).toMatchObject({ from: 'worked out', dishedOn: 'first' });
		expect(second.sums.total.measuredMm).toBeCloseTo(141.02, 9);
	});

	it('says what is missing instead of judging', () => {
		const test = withBuild();
		const bare = [{ label: 'shell', side: 'hub', nominalMm: 135 }];
		addStack(test.ledger, test.actor, test.buildId, { variant: 'bare', elements: bare });
		const view = only(test, test.buildId);
		expect(view.warnings).toEqual([]);
		expect(view.spacers).toBeNull();
		expect(view.notJudged.join(' ')).toMatch(/on no wheel yet.*Engagement.*End float.*Rim/s);
	});

	it('is refused with absurd lengths or negative tolerances, by name, and nothing is kept', () => {
		const { ledger, actor, buildId } = withBuild();
		const wrong: [Partial<StackElementInput>, RegExp][] = [
			[{ nominalMm: 900 }, /length of left end cap is a number from 0 to 300 mm/],
			[{ nominalMm: null }, /length of left end cap is missing/],
			[{ nominalMm: NaN }, /length of left end cap/],
			[{ minusMm: -0.1 }, /Minus of left end cap is a number from 0 to 10 mm/],
			[{ plusMm: 11 }, /Plus of/],
			[{ nominalMm: 0.2, minusMm: 0.3, measuredMm: null }, /shorter than nothing/],
			[{ measuredMm: 120 }, /measured as 120 mm and is drawn as 12 mm/],
			[{ side: 'top' }, /on which side/],
			[{ label: ' ' }, /name is missing/],
			[{ inEngagement: 2 }, /takes away, adds or neither/],
			[{ partId: 99 }, /part named for left end cap is not in the ledger/]
		];
		for (const [change, sentence] of wrong) {
			const elements = [{ ...ELEMENTS[0], ...change }, ...ELEMENTS.slice(1)];
			expect(() => addStack(ledger, actor, buildId, stack('x', { elements }))).toThrow(sentence);
		}
		expect(() => addStack(ledger, actor, buildId, stack('x', { elements: [] }))).toThrow('at least one');
		expect(() => addStack(ledger, actor, buildId, stack('x', { overLocknutMm: 20 }))).toThrow('50 to 300');
		expect(() => addStack(ledger, actor, 99, stack('x'))).toThrow('no such build');
		expect(rowsOf(ledger, 'SELECT 1 FROM hub_stack UNION ALL SELECT 1 FROM hub_stack_element')).toEqual([]);
	});

	it('tells the second of two people who change it, and overwrites nothing', () => {
		const test = withBuild();
		const id = addStack(test.ledger, test.actor, test.buildId, stack('a'));
		const seen = only(test, test.buildId).rowVersion;
		changeStack(test.ledger, test.actor, id, stack('a', { note: 'first' }), seen);
		expect(() => changeStack(test.ledger, test.actor, id, stack('a', { note: 'second' }), seen)).toThrow(
			/changed this stack while you were at it; nothing was overwritten/
		);
		expect(only(test, test.buildId).note).toBe('first');
	});

	it('of a build that rides refer to is completed, but no more changed', async () => {
		const test = freshLedger();
		const { buildId } = withHardware(test);
		const elements = ELEMENTS.map((element) => ({ ...element, measuredMm: null }));
		const id = addStack(test.ledger, test.actor, buildId, stack('a', { elements }));
		await addRide(test);
		expect(stackPage(test.ledger, buildId).lock).toMatch(/refers? to it/);
		changeStack(test.ledger, test.actor, id, stack('a'), 1);
		expect(only(test, buildId).sums.total.measuredMm).toBeCloseTo(141.02, 9);
		const thicker = ELEMENTS.map((element) => ({ ...element, nominalMm: element.nominalMm! + 1 }));
		expect(() => changeStack(test.ledger, test.actor, id, stack('a', { elements: thicker }), 2)).toThrow(
			/new revision/
		);
		expect(() =>
			changeStack(test.ledger, test.actor, id, stack('a', { elements: ELEMENTS.slice(1) }), 2)
		).toThrow(/new revision/);
	});

	it('goes along with a copy of its build, without what was measured on the other hub', () => {
		const test = withBuild();
		const first = addStack(test.ledger, test.actor, test.buildId, stack('a', { rimOffsetMm: 0.3 }));
		addStack(test.ledger, test.actor, test.buildId, stack('b', { dishedOnId: first }));
		const copyId = copyBuild(test.ledger, test.actor, test.buildId, 'Next');
		const [a, b] = stackPage(test.ledger, copyId).stacks;
		expect([a.variant, b.variant]).toEqual(['a', 'b']);
		expect(b.dishedOnId).toBe(a.id);
		expect(a.rimOffsetMm).toBeNull();
		expect(a.elements.every(({ measuredMm }) => measuredMm === null)).toBe(true);
		expect(only(test, test.buildId).rimOffsetMm).toBe(0.3);
	});

	it('is withdrawn with a reason; it stays in the ledger and its variant is free again', () => {
		const test = withBuild();
		const id = addStack(test.ledger, test.actor, test.buildId, stack('a'));
		expect(() => addStack(test.ledger, test.actor, test.buildId, stack('A'))).toThrow('already');
		expect(() => withdrawStack(test.ledger, test.actor, id, '')).toThrow('reason');
		withdrawStack(test.ledger, test.actor, id, 'measured on the wrong hub');
		expect(stackPage(test.ledger, test.buildId).stacks).toEqual([]);
		expect(rowsOf(test.ledger, 'SELECT withdrawn_reason FROM hub_stack')).toEqual([
			{ withdrawn_reason: 'measured on the wrong hub' }
		]);
		addStack(test.ledger, test.actor, test.buildId, stack('a'));
		expect(() => changeStack(test.ledger, test.actor, id, stack('a'), 1)).toThrow('withdrawn');
	});

	it('that is changed makes bench checks of its build say nothing any more', () => {
		const test = withBuild();
		const id = addStack(test.ledger, test.actor, test.buildId, stack('a'));
		test.ledger.database
			.prepare(
				`INSERT INTO bench_check (build_id, kind, static_torque_nm, torque_held, coasts_freely, no_creep, by, at_ms, created_ms)
				VALUES (?, 'check', 200, 1, 1, 1, ?, 1, 1)`
			)
			.run(test.buildId, test.actor.personId);
		changeStack(test.ledger, test.actor, id, stack('a', { note: 'only words' }), 1);
		expect(rowsOf(test.ledger, 'SELECT 1 FROM bench_check WHERE void_ms IS NULL')).toHaveLength(1);
		const elements = ELEMENTS.map((element) => ({ ...element, measuredMm: null }));
		changeStack(test.ledger, test.actor, id, stack('a', { elements }), 2);
		expect(rowsOf(test.ledger, 'SELECT void_reason FROM bench_check')).toEqual([
			{ void_reason: 'the axial stack was changed' }
		]);
	});
});

describe('spacers in stock', () => {
	it('are counted by thickness; a change of what someone else changed is refused', () => {
		const { ledger, actor } = freshLedger();
		stockSpacers(ledger, actor, { thicknessMm: 0.5, count: 3 }, null);
		stockSpacers(ledger, actor, { thicknessMm: 0.5, count: 2 }, 1);
		expect(listSpacers(ledger)).toMatchObject([{ thicknessMm: 0.5, count: 2, rowVersion: 2 }]);
		for (const seen of [null, 1])
			expect(() => stockSpacers(ledger, actor, { thicknessMm: 0.5, count: 9 }, seen)).toThrow('says 2 now');
		for (const wrong of [{ thicknessMm: 0 }, { thicknessMm: 21 }, { count: -1 }, { count: 1.5 }])
			expect(() => stockSpacers(ledger, actor, { thicknessMm: 1, count: 1, ...wrong }, null)).toThrow(
				expect.objectContaining({ code: 'wrong-value' })
			);
	});
});

describe('the workshop limits', () => {
	it('begin with common practice, are changed one by one, and may be taken away', () => {
		const { ledger, actor } = freshLedger();
		expect(hardwareLimits(ledger)).toMatchObject({ tooWideMm: 0.5, engagementDepthMm: null, runInM: 0 });
		setHardwareLimits(ledger, actor, { tooWideMm: null, engagementDepthMm: 4, runInM: 50_000 });
		expect(hardwareLimits(ledger)).toMatchObject({
			tooWideMm: null,
			engagementDepthMm: 4,
			rimOffsetMm: 1,
			runInM: 50_000
		});
		expect(() => setHardwareLimits(ledger, actor, { endFloatMm: -1 })).toThrow('from 0 to 5 mm');
		expect(() => setHardwareLimits(ledger, actor, { runInM: null as unknown as number })).toThrow('run-in');
	});

	it('are not overwritten unseen', () => {
		const { ledger, actor } = freshLedger();
		setHardwareLimits(ledger, actor, { rimOffsetMm: 2 }, { rimOffsetMm: 1 });
		expect(() => setHardwareLimits(ledger, actor, { rimOffsetMm: 3 }, { rimOffsetMm: 1 })).toThrow(
			/changed by someone else to 2/
		);
		expect(hardwareLimits(ledger).rimOffsetMm).toBe(2);
	});
});
