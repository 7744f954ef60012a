import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/** What a part can be; the words of the trade. A lubricant is counted in grams, all else in pieces. */
export const PART_KINDS = [
	'ratchet ring',
	'toothed ring',
	'pawl set',
	'spring',
	'spring seat',
	'spacer',
	'axle',
	'bearing',
	'end cap',
	'freehub body',
	'hub shell',
	'seal',
	'lubricant',
	'other'
] as const;
export type PartKind = (typeof PART_KINDS)[number];

export const PART_FINISHES = ['as produced', 'hand-fitted'] as const;
/** '' = not said */
export type PartFinish = (typeof PART_FINISHES)[number] | '';

/** One part number in one revision and batch. */
export interface PartRecord {
	id: number;
	number: string;
	/** '' = none is written on it */
	revision: string;
	batch: string;
	name: string;
	kind: PartKind;
	material: string;
	finish: PartFinish;
	/** positions per hub turn at which it can take up drive */
	pointsOfEngagement: number | null;
	note: string;
	/** sent back with a change, so that nobody overwrites another's */
	rowVersion: number;
	example: number;
}

/** A nominal length with its tolerance, millimetres. */
export interface PartLength {
	/** "width", "outer diameter" ... */
	what: string;
	nominalMm: number;
	/** how much may be missing, >= 0 */
	minusMm: number;
	/** how much may be too much, >= 0 */
	plusMm: number;
}

const SELECT = `SELECT id, number, revision, batch, name, kind, material, finish,
	points_of_engagement AS pointsOfEngagement, note, row_version AS rowVersion, example FROM part`;

/** All parts, in order of number, revision and batch. */
export function listPartRecords(ledger: Ledger): PartRecord[] {
	return ledger.database.prepare<[], PartRecord>(`${SELECT} ORDER BY number, revision, batch`).all();
}

/** @throws LedgerRefusal not-found */
export function findPart(ledger: Ledger, partId: number): PartRecord {
	const part = ledger.database.prepare<[number], PartRecord>(`${SELECT} WHERE id = ?`).get(partId);
	if (!part) throw new LedgerRefusal('not-found', 'There is no such part.');
	return part;
}

/** The nominal lengths of a part, in order of their names. */
export function partLengths(ledger: Ledger, partId: number): PartLength[] {
	return ledger.database
		.prepare<[number], PartLength>(
			`SELECT what, nominal_mm AS nominalMm, minus_mm AS minusMm, plus_mm AS plusMm
			FROM part_length WHERE part_id = ? ORDER BY what`
		)
		.all(partId);
}
