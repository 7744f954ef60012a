import { LedgerRefusal, type BuildContents, type BuildContentsInput } from '$lib/server';
import { workshopInstant } from '../../../fitting';
import { decimal, rowId, text } from '../../../forms';
import { wallClock } from '$lib/ui/zonedInstant';

const MOST_ROWS = 120;

/** A build as the form sends it: each line of parts and each joint in numbered fields. */
export function readBuildForm(form: FormData, before: BuildContents, zone: string): BuildContentsInput {
	const shownAt = before.builtMs === null ? '' : wallClock(before.builtMs, zone);
	return {
		name: text(form, 'name'),
		description: text(form, 'description'),
		stepHubDeg: decimal(form, 'stepHubDeg'),
		builtBy: rowId(form, 'builtBy'),
		builtAt: builtAt(form, before, shownAt),
		preload: text(form, 'preload'),
		endFloatMm: decimal(form, 'endFloatMm'),
		notes: text(form, 'notes'),
		bill: rowsOf(form, 'part').flatMap((row) => billLine(form, row)),
		torques: rowsOf(form, 'joint').flatMap((row) => torqueLine(form, row))
	};
}

/** The form shows minutes, the ledger keeps more: an instant that was not touched stays as it was. */
function builtAt(form: FormData, before: BuildContents, shownAt: string): string | null {
	const typed = text(form, 'builtAt');
	if (typed === '') return null;
	if (typed === shownAt && before.builtMs !== null) return new Date(before.builtMs).toISOString();
	return workshopInstant(form, 'builtAt');
}

/** Rows in the order that the person gave them; rows of the same place keep their order. */
function rowsOf(form: FormData, field: string): number[] {
	const rows = Array.from({ length: MOST_ROWS }, (_, row) => row).filter((row) =>
		form.has(`${field}-${row}`)
	);
	const place = (row: number) => {
		const typed = decimal(form, `${field}Place-${row}`) ?? MOST_ROWS;
		return Number.isFinite(typed) ? typed : MOST_ROWS;
	};
	return rows.sort((a, b) => place(a) - place(b) || a - b);
}

function billLine(form: FormData, row: number): NonNullable<BuildContentsInput['bill']>[number][] {
	const partId = rowId(form, `part-${row}`);
	const serial = text(form, `serial-${row}`);
	const note = text(form, `partNote-${row}`);
	if (partId !== null) return [{ partId, quantity: decimal(form, `quantity-${row}`), serial, note }];
	if (text(form, `had-${row}`) === 'yes' || (serial === '' && note === '')) return [];
	throw new LedgerRefusal('wrong-value', `A line with "${serial || note}" names no part: choose one.`);
}

function torqueLine(form: FormData, row: number): NonNullable<BuildContentsInput['torques']>[number][] {
	const line = {
		joint: text(form, `joint-${row}`),
		wantedNm: decimal(form, `wanted-${row}`),
		recordedNm: decimal(form, `recorded-${row}`),
		tool: text(form, `tool-${row}`)
	};
	const taken = text(form, `hadJoint-${row}`) === 'yes' && line.joint === '';
	const empty = !line.joint && !line.tool && line.wantedNm === null && line.recordedNm === null;
	return taken || empty ? [] : [line];
}

/** What stands in the fields of the form for a build, by their names. */
export function fieldsOf(contents: BuildContents, zone: string): Record<string, string> {
	const figure = (value: number | null) => (value === null ? '' : String(value));
	const fields: Record<string, string> = {
		name: contents.name,
		description: contents.description,
		stepHubDeg: figure(contents.stepHubDeg),
		builtBy: figure(contents.builtBy),
		builtAt: contents.builtMs === null ? '' : wallClock(contents.builtMs, zone),
		preload: contents.preload,
		endFloatMm: figure(contents.endFloatMm),
		notes: contents.notes
	};
	contents.bill.forEach((line, row) => {
		fields[`part-${row}`] = String(line.partId);
		fields[`quantity-${row}`] = String(line.quantity);
		fields[`serial-${row}`] = line.serial;
		fields[`partNote-${row}`] = line.note;
	});
	contents.torques.forEach((line, row) => {
		fields[`joint-${row}`] = line.joint;
		fields[`wanted-${row}`] = figure(line.wantedNm);
		fields[`recorded-${row}`] = figure(line.recordedNm);
		fields[`tool-${row}`] = line.tool;
	});
	return fields;
}
