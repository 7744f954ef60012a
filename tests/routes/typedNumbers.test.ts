import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import ElementRow from '../../src/routes/builds/[id]/stack/edit/ElementRow.svelte';
import { stackOfForm, typedStack } from '../../src/routes/builds/[id]/stack/edit/stackForm';
import FindingFields from '../../src/routes/wheels/[id]/inspections/write/FindingFields.svelte';
import {
	inspectionOfForm,
	typedInspection
} from '../../src/routes/wheels/[id]/inspections/write/inspectionForm';

function formOf(fields: Record<string, string>): FormData {
	const form = new FormData();
	for (const [name, value] of Object.entries(fields)) form.append(name, value);
	return form;
}
const shown = (value: number | null | undefined) =>
	value === null || value === undefined || Number.isNaN(value) ? '' : `shown ${value}`;

describe('a stack that was refused', () => {
	const form = formOf({
		variant: 'narrow',
		overLocknutMm: '142 or so',
		rimOffsetMm: '-0,5',
		label: 'spacer',
		side: 'left',
		nominalMm: '0.2.5',
		minusMm: '0,05',
		plusMm: '',
		measuredMm: 'not yet'
	});

	it('stands in its fields as it was typed, also what is no number', () => {
		const typed = typedStack(form);
		expect([typed.overLocknutTyped, typed.rimOffsetTyped]).toEqual(['142 or so', '-0,5']);
		const [element] = typed.elements;
		const { body } = render(ElementRow, {
			props: { number: 1, element, sides: ['left'], parts: { ofBuild: [], others: [] }, shown }
		});
		for (const words of ['0.2.5', '0,05', 'not yet']) expect(body).toContain(`value="${words}"`);
		expect(body).not.toContain('shown');
	});

	it('comes to the ledger as numbers alone, of which it refuses what is none', () => {
		const [element] = stackOfForm(form).elements;
		expect(element).toMatchObject({ nominalMm: NaN, minusMm: 0.05, plusMm: null, measuredMm: NaN });
		expect(element).not.toHaveProperty('typed');
	});
});

describe('an inspection that was refused', () => {
	const form = formOf({
		at: '2026-05-09T17:30',
		odometerKm: 'about 1200',
		kind: 'tooth height',
		values: '1,42 1.4.1',
		resolution: 'a hundredth',
		wearLimit: '1,3'
	});

	it('stands in its fields as it was typed, also readings that are none', () => {
		const typed = typedInspection(form);
		expect([typed.at, typed.odometerTyped]).toEqual(['2026-05-09T17:30', 'about 1200']);
		const [finding] = typed.findings;
		const { body } = render(FindingFields, {
			props: { number: 1, finding, kinds: [], withValues: true, shown }
		});
		for (const words of ['1,42 1.4.1', 'a hundredth', '1,3']) expect(body).toContain(`value="${words}"`);
		expect(body).not.toContain('shown');
	});

	it('comes to the ledger as numbers alone, of which it refuses what is none', () => {
		const { findings, odometerM } = inspectionOfForm(form, '2026-05-09T15:30:00Z');
		expect(odometerM).toBeNaN();
		expect(findings).toEqual([
			expect.objectContaining({ values: [1.42, NaN], resolution: NaN, wearLimit: 1.3 })
		]);
		expect(findings[0]).not.toHaveProperty('typed');
	});
});
