import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { Finding } from './inspectionsInput';

export interface InspectionRecord {
	id: number;
	wheelId: number;
	atMs: number;
	odometerM: number | null;
	inspectedBy: number;
	/** code of who inspected */
	byCode: string;
	note: string;
	rowVersion: number;
	withdrawnReason: string | null;
	findings: Finding[];
}

const SELECT = `SELECT i.id, i.wheel_id AS wheelId, i.at_ms AS atMs, i.odometer_m AS odometerM,
	i.inspected_by AS inspectedBy, p.code AS byCode, i.note, i.row_version AS rowVersion,
	i.withdrawn_reason AS withdrawnReason
	FROM inspection i JOIN person p ON p.id = i.inspected_by`;

type Row = Omit<InspectionRecord, 'findings'>;

/** The inspections of a wheel that stand, or of all wheels, in order of time. */
export function listInspections(ledger: Ledger, wheelId?: number): InspectionRecord[] {
	return ledger.database
		.prepare<[{ wheelId: number | null }], Row>(
			`${SELECT} WHERE i.withdrawn_ms IS NULL AND (@wheelId IS NULL OR i.wheel_id = @wheelId)
			ORDER BY i.at_ms, i.id`
		)
		.all({ wheelId: wheelId ?? null })
		.map((row) => ({ ...row, findings: findingsOf(ledger, row.id) }));
}

/** One inspection, also one that was withdrawn. @throws LedgerRefusal not-found */
export function findInspection(ledger: Ledger, inspectionId: number): InspectionRecord {
	const row = ledger.database.prepare<[number], Row>(`${SELECT} WHERE i.id = ?`).get(inspectionId);
	if (!row) throw new LedgerRefusal('not-found', 'There is no such inspection.');
	return { ...row, findings: findingsOf(ledger, row.id) };
}

function findingsOf(ledger: Ledger, inspectionId: number): Finding[] {
	const values = ledger.database
		.prepare<[number], { findingId: number; value: number }>(
			`SELECT v.finding_id AS findingId, v.value FROM inspection_value v
			JOIN inspection_finding f ON f.id = v.finding_id WHERE f.inspection_id = ?
			ORDER BY v.finding_id, v.repeat`
		)
		.all(inspectionId);
	return ledger.database
		.prepare<[number], Omit<Finding, 'values'> & { id: number }>(
			`SELECT id, kind, place, instrument, unit, resolution, wear_limit AS wearLimit,
				limit_is AS limitIs, words
			FROM inspection_finding WHERE inspection_id = ? ORDER BY position`
		)
		.all(inspectionId)
		.map(({ id, ...finding }) => ({
			...finding,
			values: values.filter(({ findingId }) => findingId === id).map(({ value }) => value)
		}));
}

/** Writes the findings of an inspection anew. Belongs in the caller's transaction, after its checks. */
export function writeFindings(ledger: Ledger, inspectionId: number, findings: readonly Finding[]): void {
	const { database } = ledger;
	database
		.prepare(
			`DELETE FROM inspection_value WHERE finding_id IN
				(SELECT id FROM inspection_finding WHERE inspection_id = ?)`
		)
		.run(inspectionId);
	database.prepare('DELETE FROM inspection_finding WHERE inspection_id = ?').run(inspectionId);
	const addFinding = database.prepare(
		`INSERT INTO inspection_finding (inspection_id, position, kind, place, instrument, unit, resolution,
			wear_limit, limit_is, words)
		VALUES (@inspectionId, @position, @kind, @place, @instrument, @unit, @resolution, @wearLimit,
			@limitIs, @words)`
	);
	const addValue = database.prepare(
		'INSERT INTO inspection_value (finding_id, repeat, value) VALUES (?, ?, ?)'
	);
	findings.forEach(({ values, ...finding }, index) => {
		const { lastInsertRowid } = addFinding.run({ ...finding, inspectionId, position: index + 1 });
		values.forEach((value, repeat) => addValue.run(lastInsertRowid, repeat + 1, value));
	});
}
