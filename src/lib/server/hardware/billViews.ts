import { partMark, type BillEntry } from '$lib/hardware/bill';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { billOf, torquesOf } from './buildContents';
import { findPart, type PartRecord } from './partRecords';

/** A line of the bill, ready to read. */
export interface BillLineView {
	position: number;
	part: PartRecord & { mark: string };
	quantity: number;
	/** "g" for a lubricant, "" for pieces */
	unit: string;
	serial: string;
	note: string;
}

export interface TorqueLineView {
	position: number;
	joint: string;
	wantedNm: number | null;
	recordedNm: number | null;
	tool: string;
	/** who tightened it, a code, and when */
	by: string | null;
	at: string | null;
}

/** The bill of one build in order of assembly. */
export function billView(ledger: Ledger, buildId: number): BillLineView[] {
	return billOf(ledger, buildId).map(({ partId, ...line }, i) => {
		const part = findPart(ledger, partId);
		return {
			...line,
			position: i + 1,
			part: { ...part, mark: partMark(part) },
			unit: part.kind === 'lubricant' ? 'g' : ''
		};
	});
}

/** The joints of one build in order of assembly. */
export function torqueView(ledger: Ledger, buildId: number): TorqueLineView[] {
	const codes = peopleCodes(ledger);
	return torquesOf(ledger, buildId).map(({ personId, atMs, ...line }, i) => ({
		...line,
		position: i + 1,
		by: personId === null ? null : (codes.get(personId) ?? null),
		at: atMs === null ? null : toInstant(atMs)
	}));
}

export function peopleCodes(ledger: Ledger): Map<number, string> {
	const people = ledger.database
		.prepare<[], { id: number; code: string }>('SELECT id, code FROM person')
		.all();
	return new Map(people.map(({ id, code }) => [id, code]));
}

/** The bill as the core compares it. */
export function billEntries(bill: readonly BillLineView[]): BillEntry[] {
	return bill.map(({ part, quantity, serial, note }) => ({ part, quantity, serial, note }));
}
