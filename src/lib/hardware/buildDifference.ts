import { partMark, sameText, type BillEntry } from './bill';
import { pairBillEntries } from './pairBillEntries';

/** One word of a line that is no longer what it was. */
export interface ChangedField {
	readonly field: 'part' | 'revision' | 'batch' | 'finish' | 'serial' | 'quantity' | 'note';
	readonly before: string;
	readonly after: string;
}

export interface BillDifference {
	readonly change: 'added' | 'removed' | 'replaced' | 'changed' | 'same';
	readonly before: BillEntry | null;
	readonly after: BillEntry | null;
	/** empty for what was added, removed or stayed the same */
	readonly fields: readonly ChangedField[];
}

/**
 * How a bill of parts differs from its predecessor's, part by part. Lines of one part number belong
 * together; of what is then left over, the only part of a kind replaces the only one of that kind. A
 * replaced part is told by its whole mark (number, revision, batch), since the parts of another number have
 * nothing else in common.
 *
 * @param before bill of the predecessor, in any order
 * @param after bill of the build, in order of assembly
 * @returns the lines of `after` in their order, then what was removed; none when both bills are empty
 * @example ring revision A becomes B:
 *   // [{ change: 'changed', fields: [{ field: 'revision', before: 'A', after: 'B' }], ... }]
 * Source: common practice, no source.
 */
export function buildDifference(before: readonly BillEntry[], after: readonly BillEntry[]): BillDifference[] {
	return pairBillEntries(before, after).map(([was, is]): BillDifference => {
		if (!was) return { change: 'added', before: null, after: is, fields: [] };
		if (!is) return { change: 'removed', before: was, after: null, fields: [] };
		const fields = changedFields(was, is);
		if (fields.length === 0) return { change: 'same', before: was, after: is, fields };
		return { change: fields[0].field === 'part' ? 'replaced' : 'changed', before: was, after: is, fields };
	});
}

function changedFields(was: BillEntry, is: BillEntry): ChangedField[] {
	const fields: ChangedField[] = [];
	const compare = (field: ChangedField['field'], before: string, after: string) => {
		if (!sameText(before, after)) fields.push({ field, before, after });
	};
	if (sameText(was.part.number, is.part.number)) {
		compare('revision', was.part.revision, is.part.revision);
		compare('batch', was.part.batch, is.part.batch);
	} else compare('part', partMark(was.part), partMark(is.part));
	compare('finish', was.part.finish, is.part.finish);
	compare('quantity', String(was.quantity), String(is.quantity));
	compare('serial', was.serial, is.serial);
	compare('note', was.note, is.note);
	return fields;
}
