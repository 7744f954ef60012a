import { isErased } from '../erasure/finishErasures';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/** What stands against attaching a file. All belong in the transaction that attaches. */
interface OfThing {
	subject: string;
	subjectId: number;
}

/** in SQL, of an attachment a of one thing: neither withdrawn nor erased */
const STANDS = `a.subject = ? AND a.subject_id = ? AND a.withdrawn_ms IS NULL
	AND NOT EXISTS (SELECT 1 FROM erased_source e WHERE e.sha256 = a.sha256)`;

export function refuseErased(ledger: Ledger, sha256: string): void {
	if (isErased(ledger, sha256))
		throw new LedgerRefusal(
			'conflict',
			"This very file was erased at its owner's wish and is not taken again."
		);
}

/** Belongs in the transaction that attaches: two that come at once must not both be the last. */
export function refuseMore(ledger: Ledger, { subject, subjectId }: OfThing, most = Infinity): void {
	const standing = ledger.database
		.prepare<[string, number], number>(`SELECT count(*) FROM attachment a WHERE ${STANDS}`)
		.pluck()
		.get(subject, subjectId)!;
	if (standing >= most)
		throw new LedgerRefusal(
			'conflict',
			`There are ${most} files attached here already, and more are not taken. Take one of them away first.`
		);
}

export function refuseTwice(ledger: Ledger, { subject, subjectId }: OfThing, sha256: string): void {
	const twice = ledger.database
		.prepare(
			'SELECT 1 FROM attachment WHERE subject = ? AND subject_id = ? AND sha256 = ? AND withdrawn_ms IS NULL'
		)
		.get(subject, subjectId, sha256);
	if (twice) throw new LedgerRefusal('conflict', 'This very file is attached here already.');
}
