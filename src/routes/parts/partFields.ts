import type { PartInput, PartView } from '$lib/server';
import { decimal, text } from '../forms';

const MOST_LENGTHS = 40;

/** A part as the form sends it: each length in numbered fields; a length goes when its name is emptied. */
export function readPartForm(form: FormData): PartInput {
	const rows = Array.from({ length: MOST_LENGTHS }, (_, row) => row).filter((row) => form.has(`what-${row}`));
	const lengths = rows.flatMap((row) => {
		const length = {
			what: text(form, `what-${row}`),
			nominalMm: decimal(form, `nominal-${row}`),
			minusMm: decimal(form, `minus-${row}`),
			plusMm: decimal(form, `plus-${row}`)
		};
		const empty = length.nominalMm === null && length.minusMm === null && length.plusMm === null;
		const taken = length.what === '' && (empty || text(form, `had-${row}`) === 'yes');
		return taken ? [] : [length];
	});
	return {
		number: text(form, 'number'),
		revision: text(form, 'revision'),
		batch: text(form, 'batch'),
		name: text(form, 'name'),
		kind: text(form, 'kind'),
		material: text(form, 'material'),
		finish: text(form, 'finish'),
		pointsOfEngagement: decimal(form, 'pointsOfEngagement'),
		note: text(form, 'note'),
		lengths
	};
}

/** What stands in the fields of the form for a part, by their names. */
export function fieldsOfPart(part: PartView): Record<string, string> {
	const fields: Record<string, string> = {
		number: part.number,
		revision: part.revision,
		batch: part.batch,
		name: part.name,
		kind: part.kind,
		material: part.material,
		finish: part.finish,
		pointsOfEngagement: part.pointsOfEngagement === null ? '' : String(part.pointsOfEngagement),
		note: part.note
	};
	part.lengths.forEach((length, row) => {
		fields[`what-${row}`] = length.what;
		fields[`nominal-${row}`] = String(length.nominalMm);
		fields[`minus-${row}`] = String(length.minusMm);
		fields[`plus-${row}`] = String(length.plusMm);
	});
	return fields;
}
