import { describe, expect, it } from 'vitest';
import type { BuildContents } from '$lib/server';
import { fieldsOf, readBuildForm } from '../../src/routes/builds/[id]/edit/buildFields';
import { readPartForm } from '../../src/routes/parts/partFields';

const BUILD: BuildContents = {
	name: 'Trial',
	description: 'why',
	stepHubDeg: 15,
	builtBy: 3,
	// seconds that the form does not show
	builtMs: Date.UTC(2026, 4, 4, 8, 30, 42),
	preload: '',
	endFloatMm: 0.05,
	notes: '',
	bill: [
		{ partId: 7, quantity: 1, serial: 'S1', note: 'first' },
		{ partId: 9, quantity: 0.5, serial: '', note: '' }
	],
	torques: [{ joint: 'cap', wantedNm: 12, recordedNm: null, tool: '', personId: null, atMs: null }]
};

function formOf(change: Record<string, string> = {}): FormData {
	const form = new FormData();
	for (const [name, value] of Object.entries({ ...fieldsOf(BUILD, 'Europe/Lisbon'), ...change }))
		form.set(name, value);
	return form;
}
const read = (change: Record<string, string> = {}) => readBuildForm(formOf(change), BUILD, 'Europe/Lisbon');

describe('readBuildForm', () => {
	it('reads back what stood in the form, to the millisecond where nothing was touched', () => {
		expect(read()).toEqual({
			name: 'Trial',
			description: 'why',
			stepHubDeg: 15,
			builtBy: 3,
			builtAt: '2026-05-04T08:30:42.000Z',
			preload: '',
			endFloatMm: 0.05,
			notes: '',
			bill: BUILD.bill,
			torques: [{ joint: 'cap', wantedNm: 12, recordedNm: null, tool: '' }]
		});
		expect(read({ builtAt: '' }).builtAt).toBeNull();
	});

	it('orders lines by the place that was typed, those without one last', () => {
		const bill = (change: Record<string, string>) => read(change).bill!.map(({ partId }) => partId);
		expect(bill({ 'partPlace-0': '2', 'partPlace-1': '1' })).toEqual([9, 7]);
		expect(bill({ 'partPlace-0': '', 'partPlace-1': '5' })).toEqual([9, 7]);
		expect(bill({ 'partPlace-0': 'x', 'partPlace-1': '1' })).toEqual([9, 7]);
		expect(bill({ 'partPlace-0': '2', 'partPlace-1': '3', 'part-2': '8', 'partPlace-2': '2,5' })).toEqual([
			7, 8, 9
		]);
	});

	it('takes out a line set to none and a joint whose name was emptied', () => {
		expect(read({ 'part-0': '', 'had-0': 'yes' }).bill).toHaveLength(1);
		expect(read({ 'joint-0': '', 'hadJoint-0': 'yes' }).torques).toEqual([]);
	});

	it('leaves empty lines out, and refuses a new line that names no part', () => {
		expect(read({ 'part-2': '', 'quantity-2': '1', 'joint-1': '' })).toMatchObject({
			bill: [{}, {}],
			torques: [{}]
		});
		expect(() => read({ 'part-2': '', 'serial-2': 'S9' })).toThrow('A line with "S9" names no part');
		// a torque without a joint goes on to the ledger, which refuses it
		expect(read({ 'joint-1': '', 'wanted-1': '5' }).torques).toHaveLength(2);
	});

	it('reads a decimal comma, and hands on what is no number as such', () => {
		expect(read({ endFloatMm: '0,07' }).endFloatMm).toBe(0.07);
		expect(read({ 'quantity-1': 'some' }).bill![1].quantity).toBeNaN();
	});
});

describe('readPartForm', () => {
	const part = (lengths: Record<string, string>) => {
		const form = new FormData();
		for (const [name, value] of Object.entries({ number: 'N', name: 'n', kind: 'other', ...lengths }))
			form.set(name, value);
		return readPartForm(form).lengths;
	};

	it('reads lengths, leaves empty ones out and takes out one whose name was emptied', () => {
		const width = { 'what-0': 'width', 'nominal-0': '7,5', 'minus-0': '0.05', 'plus-0': '' };
		expect(part({ ...width, 'what-1': '', 'nominal-1': '' })).toEqual([
			{ what: 'width', nominalMm: 7.5, minusMm: 0.05, plusMm: null }
		]);
		expect(part({ ...width, 'what-0': '', 'had-0': 'yes' })).toEqual([]);
	});

	it('hands on a length without a name, so that it is refused and not lost', () => {
		expect(part({ 'what-0': '', 'nominal-0': '7' })).toHaveLength(1);
	});
});
