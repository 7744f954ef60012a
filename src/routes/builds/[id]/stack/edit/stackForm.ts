import type { StackElementInput, StackInput } from '$lib/server';
import { decimal, rowId, text } from '../../../../forms';

/** An element for the form after a refusal. */
export interface TypedElement extends StackElementInput {
	/** lengths as they were typed, which may be no numbers */
	typed?: Readonly<Record<'nominalMm' | 'minusMm' | 'plusMm' | 'measuredMm', string>>;
}

/** A stack for the form after a refusal. */
export interface TypedStack extends StackInput {
	elements: TypedElement[];
	/** as they were typed, which may be no numbers */
	overLocknutTyped?: string;
	rimOffsetTyped?: string;
}

/**
 * A stack as it was typed: rows in the order of their numbers, so that one can be put between two others;
 * a row without a name and a length is left out.
 */
export function stackOfForm(form: FormData): StackInput {
	return { ...factsOf(form), elements: elementsOf(form).map(({ element }) => element) };
}

/** The same as it stands in the fields. */
export function typedStack(form: FormData): TypedStack {
	return {
		...factsOf(form),
		overLocknutTyped: text(form, 'overLocknutMm'),
		rimOffsetTyped: text(form, 'rimOffsetMm'),
		elements: elementsOf(form).map(({ element, typed }) => ({ ...element, typed }))
	};
}

function factsOf(form: FormData): Omit<StackInput, 'elements'> {
	return {
		variant: text(form, 'variant'),
		overLocknutMm: decimal(form, 'overLocknutMm'),
		dishedOnId: rowId(form, 'dishedOn'),
		rimOffsetMm: decimal(form, 'rimOffsetMm'),
		note: text(form, 'note')
	};
}

function elementsOf(form: FormData) {
	const rows = form.getAll('label').map((label, row) => {
		const of = (name: string) => String(form.getAll(name)[row] ?? '').trim();
		return { label: String(label).trim(), of, order: number(of('order')) ?? row + 1 };
	});
	return rows
		.filter(({ label, of }) => label !== '' || of('nominalMm') !== '')
		.sort((a, b) => a.order - b.order)
		.map(({ label, of }) => {
			const typed = {
				nominalMm: of('nominalMm'),
				minusMm: of('minusMm'),
				plusMm: of('plusMm'),
				measuredMm: of('measuredMm')
			};
			const element: StackElementInput = {
				label,
				side: of('side'),
				nominalMm: number(typed.nominalMm),
				minusMm: number(typed.minusMm),
				plusMm: number(typed.plusMm),
				measuredMm: number(typed.measuredMm),
				inEngagement: number(of('inEngagement')) ?? 0,
				inEndFloat: number(of('inEndFloat')) ?? 0,
				partId: number(of('part'))
			};
			return { element, typed };
		});
}

/** null when nothing was typed, NaN when it is no number: the ledger refuses that by name */
function number(typed: string): number | null {
	return typed === '' ? null : Number(typed.replace(',', '.').replace('−', '-'));
}
