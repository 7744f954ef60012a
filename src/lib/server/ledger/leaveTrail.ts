import type { Actor } from '../actor';
import type { Ledger } from './openLedger';

/** What a correction changed: values before and after, or whatever makes the row understood later. */
export type TrailDetail = Readonly<Record<string, unknown>>;

/**
 * Writes down who did what to which row. Belongs in the same transaction as the change itself.
 *
 * @param subject the table's word: 'ride', 'wheel', 'verdict' ...
 */
export function leaveTrail(
	ledger: Ledger,
	actor: Actor,
	action: string,
	subject: string,
	subjectId: number | string,
	detail: TrailDetail = {}
): void {
	ledger.database
		.prepare(
			'INSERT INTO trail (at_ms, actor_id, action, subject, subject_id, detail) VALUES (?, ?, ?, ?, ?, ?)'
		)
		.run(ledger.now(), actor.personId, action, subject, String(subjectId), JSON.stringify(detail));
}
