import { INSPECTION_KINDS, type FindingInput, type InspectionInput } from '$lib/server';
import { decimal, rowId, text } from '../../../../forms';

/** A finding for the form after a refusal. */
export interface TypedFinding extends FindingInput {
	/** numbers as they were typed, which may be none */
	typed?: { readonly values: string; readonly resolution: string; readonly wearLimit: string };
}

/** An inspection for the form after a refusal. */
export interface TypedInspection extends InspectionInput {
	findings: TypedFinding[];
	/** the odometer as it was typed, which may be no number */
	odometerTyped?: string;
}

/**
 * An inspection as it was typed; a row in which nothing was measured and nothing written is left out.
 *
 * @param at the instant, already in UTC
 */
export function inspectionOfForm(form: FormData, at: string): InspectionInput {
	return { ...factsOf(form), at, findings: findingsOf(form).map(({ finding }) => finding) };
}

/** The same as it stands in the fields, the time by the workshop's clock. */
export function typedInspection(form: FormData): TypedInspection {
	return {
		...factsOf(form),
		at: text(form, 'at'),
		odometerTyped: text(form, 'odometerKm'),
		findings: findingsOf(form).map(({ finding, typed }) => ({ ...finding, typed }))
	};
}

function factsOf(form: FormData): Omit<InspectionInput, 'at' | 'findings'> {
	const odometerKm = decimal(form, 'odometerKm');
	return {
		odometerM: odometerKm === null ? null : odometerKm * 1000,
		// nobody bears the number 0: the ledger asks who it was
		inspectedBy: rowId(form, 'inspectedBy') ?? 0,
		note: text(form, 'note')
	};
}

function findingsOf(form: FormData) {
	return form.getAll('kind').flatMap((kind, row) => findingOf(form, String(kind), row) ?? []);
}

function findingOf(form: FormData, kind: string, row: number) {
	const of = (name: string) => String(form.getAll(name)[row] ?? '').trim();
	const typed = { values: of('values'), resolution: of('resolution'), wearLimit: of('wearLimit') };
	const values = typed.values
		.split(/[\s;]+/)
		.filter((value) => value !== '')
		.map(number);
	if (values.length === 0 && of('words') === '') return null;
	const wearLimit = typed.wearLimit === '' ? null : number(typed.wearLimit);
	const usual = INSPECTION_KINDS.find((one) => one.kind === kind);
	const finding: FindingInput = {
		kind,
		place: of('place'),
		instrument: of('instrument'),
		unit: of('unit') || (usual?.units[0] ?? null),
		resolution: typed.resolution === '' ? null : number(typed.resolution),
		values,
		wearLimit,
		limitIs: wearLimit === null ? null : of('limitIs') || (usual?.limitIs ?? null),
		words: of('words')
	};
	return { finding, typed };
}

/** NaN when it is no number: the ledger refuses that by name */
function number(typed: string): number {
	return Number(typed.replace(',', '.'));
}
