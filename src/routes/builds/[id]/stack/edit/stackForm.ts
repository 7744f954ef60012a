import type { StackElementInput, StackInput } from '$lib/server';
import { decimal, rowId, text } from '../../../../forms';

/**
 * A stack as it was typed: rows in the order of their numbers, so that one can be put between two others;
 * a row without a name and a length is left out.
 */
export function stackOfForm(form: FormData): StackInput {
	return {
		variant: text(form, 'variant'),
		overLocknutMm: decimal(form, 'overLocknutMm'),
		dishedOnId: rowId(form, 'dishedOn'),
		rimOffsetMm: decimal(form, 'rimOffsetMm'),
		note: text(form, 'note'),
		elements: elementsOf(form)
	};
}

function elementsOf(form: FormData): StackElementInput[] {
	const rows = form.getAll('label').map((label, row) => {
		const of = (name: string) => String(form.getAll(name)[row] ?? '').trim();
		return { label: String(label).trim(), of, order: number(of('order')) ?? row + 1 };
	});
	return rows
		.filter(({ label, of }) => label !== '' || of('nominalMm') !== '')
		.sort((a, b) => a.order - b.order)
		.map(({ label, of }) => ({
			label,
			side: of('side'),
			nominalMm: number(of('nominalMm')),
			minusMm: number(of('minusMm')),
			plusMm: number(of('plusMm')),
			measuredMm: number(of('measuredMm')),
			inEngagement: number(of('inEngagement')) ?? 0,
			inEndFloat: number(of('inEndFloat')) ?? 0,
			partId: number(of('part'))
		}));
}

/** null when nothing was typed, NaN when it is no number: the ledger refuses that by name */
function number(typed: string): number | null {
	return typed === '' ? null : Number(typed.replace(',', '.').replace('−', '-'));
}
