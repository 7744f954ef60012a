/** What stands on a part that tells it from others: its number, revision and batch. */
export interface BillPart {
	readonly number: string;
	/** '' = none is written on it */
	readonly revision: string;
	readonly batch: string;
	readonly name: string;
	/** ratchet ring, spring, spacer ... */
	readonly kind: string;
	readonly finish: string;
}

/** One line of a bill of parts. */
export interface BillEntry {
	readonly part: BillPart;
	/** pieces; grams of a lubricant */
	readonly quantity: number;
	/** '' = it bears none */
	readonly serial: string;
	readonly note: string;
}

/** One joint that is tightened, Nm; null = not written down. */
export interface JointEntry {
	readonly joint: string;
	readonly wantedNm: number | null;
	readonly recordedNm: number | null;
}

/** Number, revision and batch in one line, as on a drawing: "RR-36, revision B, batch 12". */
export function partMark(part: Pick<BillPart, 'number' | 'revision' | 'batch'>): string {
	const revision = part.revision === '' ? '' : `, revision ${part.revision}`;
	const batch = part.batch === '' ? '' : `, batch ${part.batch}`;
	return `${part.number}${revision}${batch}`;
}

/** The same mark whatever its case: "rr-36" and "RR-36" are one number. */
export function sameText(a: string, b: string): boolean {
	return a.toLowerCase() === b.toLowerCase();
}
