import { LedgerRefusal } from '../refusal';
import { inWorkshopZone } from '../settings/inWorkshopZone';
import type { Ledger } from './openLedger';

/**
 * Two people edit the same thing: the second is told whose change stands, and nothing is overwritten.
 * Belongs in the transaction of the change.
 *
 * @param subject the table's word in the trail, shown in the refusal as well: "build", "part"
 * @param stored version of the row now
 * @param seen version that stood in the form
 * @throws LedgerRefusal conflict, naming who changed it and when
 */
export function refuseStale(
	ledger: Ledger,
	subject: string,
	subjectId: number,
	stored: number,
	seen: number
): void {
	if (stored === seen) return;
	const last = ledger.database
		.prepare<[string, string], { code: string; atMs: number }>(
			`SELECT p.code, t.at_ms AS atMs FROM trail t JOIN person p ON p.id = t.actor_id
			WHERE t.subject = ? AND t.subject_id = ? ORDER BY t.id DESC LIMIT 1`
		)
		.get(subject, String(subjectId));
	const whose = last
		? `${last.code} has changed this ${subject} meanwhile, on ${inWorkshopZone(ledger, last.atMs)}`
		: `This ${subject} was changed meanwhile`;
	throw new LedgerRefusal(
		'conflict',
		`${whose}. That change stands and nothing of yours was saved: look at it, then put yours in again.`
	);
}
