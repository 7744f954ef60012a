import type { Ledger } from './openLedger';

/**
 * The last trail entry of a thing, as its version: every change leaves one, so whoever filled a form from an
 * older entry has not seen what stands.
 *
 * @returns 0 when nothing was written about it yet
 */
export function trailVersion(ledger: Ledger, subject: string, subjectId: number): number {
	return ledger.database
		.prepare<[string, string], { last: number }>(
			'SELECT coalesce(max(id), 0) AS last FROM trail WHERE subject = ? AND subject_id = ?'
		)
		.get(subject, String(subjectId))!.last;
}
