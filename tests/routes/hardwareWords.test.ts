import { describe, expect, it } from 'vitest';
import type { IncidentView, StackView, WearView } from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { stackOfForm } from '../../src/routes/builds/[id]/stack/edit/stackForm';
import { stackRows } from '../../src/routes/builds/[id]/stack/stackWords';
import { warningWords } from '../../src/routes/builds/[id]/stack/warningWords';
import { standingWords } from '../../src/routes/standingWords';
import { inspectionOfForm } from '../../src/routes/wheels/[id]/inspections/write/inspectionForm';
import { wearWords } from '../../src/routes/wheels/[id]/inspections/wearWords';

const formats = createFormats('en-GB', 'UTC');
/** what is joined by spaces that do not break reads as with plain ones */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('stackOfForm', () => {
	it('reads rows in the order of their numbers, with comma or point, and leaves empty ones out', () => {
		const form = new FormData();
		form.set('variant', ' long ');
		form.set('overLocknutMm', '142,5');
		const row = (order: string, label: string, nominalMm: string, measuredMm = '') => {
			for (const [name, value] of Object.entries({ order, label, nominalMm, measuredMm, side: 'left' }))
				form.append(name, value);
			for (const name of ['minusMm', 'plusMm', 'inEngagement', 'inEndFloat', 'part']) form.append(name, '');
		};
		row('1', 'cap', '12,01');
		row('2', '', '');
		row('1.5', 'shim', '0.25', 'x');
		const stack = stackOfForm(form);
		expect(stack).toMatchObject({ variant: 'long', overLocknutMm: 142.5, dishedOnId: null });
		expect(stack.elements.map(({ label, nominalMm }) => [label, nominalMm])).toEqual([
			['cap', 12.01],
			['shim', 0.25]
		]);
		expect(stack.elements[1].measuredMm).toBeNaN();
	});
});

describe('inspectionOfForm', () => {
	const formOf = (rows: Record<string, string>[]) => {
		const form = new FormData();
		form.set('inspectedBy', '3');
		form.set('odometerKm', '120,5');
		for (const row of rows)
			for (const name of [
				'kind',
				'place',
				'values',
				'unit',
				'words',
				'instrument',
				'resolution',
				'wearLimit',
				'limitIs'
			])
				form.append(name, row[name] ?? '');
		return form;
	};

	it('splits repeats, takes the usual unit and limit direction, and leaves out rows without a finding', () => {
		const form = formOf([
			{ kind: 'tooth height', values: '1,52 1.5; 1.51', wearLimit: '1,2' },
			{ kind: 'spring force', place: 'tip' },
			{ kind: 'bearing feel', words: 'smooth' }
		]);
		const { findings, odometerM } = inspectionOfForm(form, '2026-05-04T10:00:00Z');
		expect(odometerM).toBe(120_500);
		expect(findings).toMatchObject([
			{ kind: 'tooth height', values: [1.52, 1.5, 1.51], unit: 'mm', wearLimit: 1.2, limitIs: 'lowest' },
			{ kind: 'bearing feel', values: [], words: 'smooth', limitIs: null }
		]);
	});

	it('hands on what is no number, so that the ledger refuses it by name', () => {
		const [finding] = inspectionOfForm(formOf([{ kind: 'end float', values: 'abc' }]), '').findings;
		expect(finding.values).toEqual([NaN]);
	});
});

describe('warningWords', () => {
	const warn = (code: StackView['warnings'][number]['code'], certain: boolean) =>
		plain(warningWords({ code, certain, valueMm: -0.02, limitMm: 0 }, formats));

	it('tells what is certain from what only may be', () => {
		expect(warn('bearing clamped', true)).toMatch(
			/^No end float \(−0\.02 mm\).*It is not ridden like this\.$/
		);
		expect(warn('bearing clamped', false)).toMatch(/^There may be no end float.*measure them\.$/);
	});

	it('has words for every warning', () => {
		for (const code of [
			'too wide',
			'too narrow',
			'end float too large',
			'engagement too shallow',
			'rim off'
		] as const)
			expect(warn(code, true).length).toBeGreaterThan(60);
	});
});

describe('stackRows', () => {
	const chain = {
		nominalMm: 142,
		worstCase: { lowestMm: 141.8, highestMm: 142.2 },
		rootSumSquare: { lowestMm: 141.9, highestMm: 142.1 }
	};
	const total = { drawn: chain, built: chain, measuredMm: null, notMeasured: ['shell'] };
	const view = (more: Partial<StackView>): StackView =>
		({
			wantedOverLocknutMm: 142.5,
			sums: { total, engagementDepth: null, endFloat: null },
			spacers: { neededMm: 0.5, from: 'drawn', choice: null, rimShiftMm: { left: 0.25, right: -0.25 } },
			rim: { offsetMm: null, from: 'not known', shiftMm: null, dishedOn: null, wantedMm: null },
			...more
		}) as StackView;
	const value = (name: string, more: Partial<StackView> = {}) =>
		plain(stackRows(view(more), formats).find((row) => row.name === name)!.value);

	it('says what is not measured and what the drawer cannot make', () => {
		expect(value('Total measured')).toBe('1 not measured: 141.80 to 142.20 mm');
		expect(value('Spacer needed')).toBe('0.50 mm, by the drawings');
		expect(value('From the drawer')).toBe('the drawer makes no such width');
		expect(value('That spacer moves the rim')).toBe('+0.25 mm added on the left, −0.25 mm on the right');
		expect(value('End float left')).toBe('not known');
	});

	it('says that no spacer helps a stack that is too wide', () => {
		const spacers = {
			neededMm: -0.3,
			from: 'measured',
			choice: null,
			rimShiftMm: null
		} as const;
		expect(value('Spacer needed', { spacers })).toBe('0.30 mm too wide, by what was measured');
		expect(value('From the drawer', { spacers })).toBe('no spacer helps');
	});
});

describe('wearWords', () => {
	const wear = (more: Partial<WearView>): WearView => ({
		key: 'k',
		build: { id: 1, name: 'New' },
		kind: 'tooth height',
		place: '',
		unit: 'mm',
		points: [],
		withoutDistance: 0,
		runInM: 0,
		limit: { value: 1.2, is: 'lowest' },
		beyondLimit: false,
		reachedM: 400_000,
		line: {
			slopePerThousandKm: -0.5,
			slopeLowerPerThousandKm: -0.62,
			slopeUpperPerThousandKm: -0.38,
			points: 5,
			confidence: 0.95,
			band: []
		},
		limitReached: { atM: 600_000, lowerM: 550_000, upperM: 700_000, kind: 'between', confidence: 0.95 },
		fewestPoints: 4,
		...more
	});
	const said = (more: Partial<WearView>) => plain(wearWords(wear(more), formats).join(' '));

	it('says wear per 1000 km, the distance of the limit with its limits, and how far it is from now', () => {
		expect(said({})).toMatch(
			/^It changes by −0\.50 mm per 1000 km \(95.% limits −0\.62 to −0\.38\), by a straight line through 5 inspections/
		);
		expect(said({})).toContain('at 600 km, 550 km to 700 km (95 %); 200 km from now.');
	});

	it('says that no latest distance can be given, or nothing at all', () => {
		const open = { atM: 900_000, lowerM: 500_000, upperM: null, kind: 'open', confidence: 0.95 } as const;
		expect(said({ limitReached: open })).toMatch(
			/not reached before 500 km.*latest distance cannot be given/
		);
		const unknown = { atM: null, lowerM: null, upperM: null, kind: 'unknown', confidence: 0.95 } as const;
		expect(said({ limitReached: unknown })).toContain('the distance is unbounded');
		expect(said({ limitReached: { ...unknown, kind: 'away' } })).toContain('moves away from its limit');
	});

	it('draws no line through fewer than four, and says so', () => {
		expect(said({ line: null, limitReached: null })).toContain('0 of at least 4 inspections');
	});

	it('says first that the newest measurement lies beyond the limit', () => {
		expect(said({ beyondLimit: true })).toContain('beyond the limit (at least 1.2 mm): not ridden on');
	});
});

describe('standingWords', () => {
	it('says whether an incident counts, and for which build', () => {
		const incident = (more: object) =>
			standingWords({
				closing: null,
				counts: true,
				build: { name: 'New' },
				...more
			} as unknown as IncidentView);
		expect(incident({})).toBe('open; counts as a slip of New until it is shown otherwise');
		expect(incident({ build: null })).toContain('of no build');
		const closing = { outcome: 'no slip of this hub' };
		expect(incident({ closing, counts: false })).toBe('closed: no slip of this hub; counts no more');
		expect(incident({ closing, counts: true })).toBe('closed; counts as a slip of New');
	});
});
