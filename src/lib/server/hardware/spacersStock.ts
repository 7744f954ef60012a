import type { SpacerCount } from '$lib/hardware/chooseSpacers';
import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/** Spacers of one thickness in the workshop's drawer. */
export interface StockedSpacer extends SpacerCount {
	id: number;
	note: string;
	/** sent back with a change, so that nobody overwrites another's */
	rowVersion: number;
	example: number;
}

export interface SpacerInput {
	/** more than 0, at most 20 mm */
	thicknessMm: number;
	/** 0 to 10000 */
	count: number;
	note?: string;
}

const SELECT =
	'SELECT id, thickness_mm AS thicknessMm, count, note, row_version AS rowVersion, example FROM stocked_spacer';

/** The drawer, the thinnest first. */
export function listSpacers(ledger: Ledger): StockedSpacer[] {
	return ledger.database.prepare<[], StockedSpacer>(`${SELECT} ORDER BY thickness_mm`).all();
}

/**
 * Writes down how many spacers of a thickness there are; a thickness that is there already is changed.
 *
 * @param seenVersion row version that the count was changed from; null = a thickness that was not listed
 * @throws LedgerRefusal wrong-value; conflict when another person changed or added it meanwhile
 */
export function stockSpacers(
	ledger: Ledger,
	actor: Actor,
	input: SpacerInput,
	seenVersion: number | null,
	options: { example?: boolean } = {}
): void {
	const thicknessMm = checkThickness(input.thicknessMm);
	if (!(Number.isInteger(input.count) && input.count >= 0 && input.count <= 10_000))
		throw new LedgerRefusal('wrong-value', 'The number of spacers is a whole number from 0 to 10000.');
	const note = checkText('The note', input.note, { min: 0, max: 200 });
	ledger.database
		.transaction(() => {
			const before = ledger.database
				.prepare<[number], StockedSpacer>(`${SELECT} WHERE abs(thickness_mm - ?) < 0.0005`)
				.get(thicknessMm);
			if ((before?.rowVersion ?? null) !== seenVersion) throw changedMeanwhile(thicknessMm, before);
			const id = before
				? changeRow(ledger, before.id, input.count, note)
				: addRow(ledger, thicknessMm, input.count, note, options.example === true);
			leaveTrail(ledger, actor, before ? 'changed' : 'created', 'spacer', id, {
				thicknessMm,
				before: before ? { count: before.count, note: before.note } : null,
				after: { count: input.count, note }
			});
		})
		.immediate();
}

function checkThickness(thicknessMm: number): number {
	if (!(thicknessMm >= 0.001 && thicknessMm <= 20))
		throw new LedgerRefusal('wrong-value', 'A spacer is more than 0 and at most 20 mm thick.');
	return Math.round(thicknessMm * 1000) / 1000;
}

function changedMeanwhile(thicknessMm: number, now: StockedSpacer | undefined): LedgerRefusal {
	const stands = now ? `it says ${now.count} now` : 'it is not in the list any more';
	return new LedgerRefusal(
		'conflict',
		`Spacers of ${thicknessMm} mm stand in the list, or were changed by someone else meanwhile: ${stands}.`
	);
}

function changeRow(ledger: Ledger, id: number, count: number, note: string): number {
	ledger.database
		.prepare('UPDATE stocked_spacer SET count = ?, note = ?, row_version = row_version + 1 WHERE id = ?')
		.run(count, note, id);
	return id;
}

function addRow(ledger: Ledger, thicknessMm: number, count: number, note: string, example: boolean): number {
	const { lastInsertRowid } = ledger.database
		.prepare(
			'INSERT INTO stocked_spacer (thickness_mm, count, note, example, created_ms) VALUES (?, ?, ?, ?, ?)'
		)
		.run(thicknessMm, count, note, example ? 1 : 0, ledger.now());
	return Number(lastInsertRowid);
}
