import { INSPECTION_KINDS, type FindingInput, type InspectionInput } from '$lib/server';
import { decimal, rowId, text } from '../../../../forms';

/**
 * An inspection as it was typed; a row in which nothing was measured and nothing written is left out.
 *
 * @param at the instant, already in UTC
 */
export function inspectionOfForm(form: FormData, at: string): InspectionInput {
	const odometerKm = decimal(form, 'odometerKm');
	return {
		at,
		odometerM: odometerKm === null ? null : odometerKm * 1000,
		// nobody bears the number 0: the ledger asks who it was
		inspectedBy: rowId(form, 'inspectedBy') ?? 0,
		note: text(form, 'note'),
		findings: form.getAll('kind').flatMap((kind, row) => findingOf(form, String(kind), row) ?? [])
	};
}

function findingOf(form: FormData, kind: string, row: number): FindingInput | null {
	const of = (name: string) => String(form.getAll(name)[row] ?? '').trim();
	const values = of('values')
		.split(/[\s;]+/)
		.filter((typed) => typed !== '')
		.map(number);
	if (values.length === 0 && of('words') === '') return null;
	const wearLimit = of('wearLimit') === '' ? null : number(of('wearLimit'));
	const usual = INSPECTION_KINDS.find((one) => one.kind === kind);
	return {
		kind,
		place: of('place'),
		instrument: of('instrument'),
		unit: of('unit') || (usual?.units[0] ?? null),
		resolution: of('resolution') === '' ? null : number(of('resolution')),
		values,
		wearLimit,
		limitIs: wearLimit === null ? null : of('limitIs') || (usual?.limitIs ?? null),
		words: of('words')
	};
}

/** NaN when it is no number: the ledger refuses that by name */
function number(typed: string): number {
	return Number(typed.replace(',', '.'));
}
