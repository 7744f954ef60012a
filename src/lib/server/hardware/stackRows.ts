import type { StackElement } from '$lib/hardware/stackElement';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/** An element as it stands in the ledger, with the part that it is, where one was named. */
export interface StackElementRecord extends StackElement {
	partId: number | null;
}

/** A build's axial stack on one freehub variant. */
export interface StackRecord {
	id: number;
	buildId: number;
	variant: string;
	/** null = as the wheel says */
	overLocknutMm: number | null;
	/** the stack on which the wheel was dished */
	dishedOnId: number | null;
	/** rim centre measured on this stack, positive towards the drive side; null = not measured */
	rimOffsetMm: number | null;
	note: string;
	rowVersion: number;
	/** in order from the left face to the right one */
	elements: StackElementRecord[];
}

const SELECT = `SELECT id, build_id AS buildId, variant, over_locknut_mm AS overLocknutMm,
	dished_on_id AS dishedOnId, rim_offset_mm AS rimOffsetMm, note, row_version AS rowVersion
	FROM hub_stack`;

/** The stacks of a build that hold, in the order in which they were written down. */
export function stacksOfBuild(ledger: Ledger, buildId: number): StackRecord[] {
	const rows = ledger.database
		.prepare<[number], Omit<StackRecord, 'elements'>>(
			`${SELECT} WHERE build_id = ? AND withdrawn_ms IS NULL ORDER BY id`
		)
		.all(buildId);
	return rows.map((row) => ({ ...row, elements: elementsOf(ledger, row.id) }));
}

/** @throws LedgerRefusal not-found, also for one that was withdrawn */
export function findStack(ledger: Ledger, stackId: number): StackRecord {
	const row = ledger.database
		.prepare<[number], Omit<StackRecord, 'elements'>>(`${SELECT} WHERE id = ? AND withdrawn_ms IS NULL`)
		.get(stackId);
	if (!row) throw new LedgerRefusal('not-found', 'There is no such stack, or it was withdrawn.');
	return { ...row, elements: elementsOf(ledger, row.id) };
}

function elementsOf(ledger: Ledger, stackId: number): StackElementRecord[] {
	return ledger.database
		.prepare<[number], StackElementRecord>(
			`SELECT label, part_id AS partId, side, nominal_mm AS nominalMm, minus_mm AS minusMm,
				plus_mm AS plusMm, measured_mm AS measuredMm, in_engagement AS inEngagement,
				in_end_float AS inEndFloat
			FROM hub_stack_element WHERE hub_stack_id = ? ORDER BY position`
		)
		.all(stackId);
}

/** Writes the elements of a stack anew. Belongs in the caller's transaction, after its checks. */
export function writeElements(
	ledger: Ledger,
	stackId: number,
	elements: readonly StackElementRecord[]
): void {
	ledger.database.prepare('DELETE FROM hub_stack_element WHERE hub_stack_id = ?').run(stackId);
	const insert = ledger.database.prepare(
		`INSERT INTO hub_stack_element (hub_stack_id, position, label, part_id, side, nominal_mm, minus_mm,
			plus_mm, measured_mm, in_engagement, in_end_float)
		VALUES (@stackId, @position, @label, @partId, @side, @nominalMm, @minusMm, @plusMm, @measuredMm,
			@inEngagement, @inEndFloat)`
	);
	elements.forEach((element, index) => insert.run({ ...element, stackId, position: index + 1 }));
}
