import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import {
	findIncident,
	INCIDENT_OUTCOMES,
	standingClosing,
	type IncidentOutcome,
	type IncidentRecord
} from './incidentsRows';

/**
 * Closes an incident: what it turned out to be, and how that was found out. It is never erased; closed as
 * something else than a slip it stays listed and counts no more.
 *
 * @param seenVersion row version that was on the page
 * @throws LedgerRefusal not-found; wrong-value without outcome or reason; conflict when it was closed or
 *   changed meanwhile
 */
export function closeIncident(
	ledger: Ledger,
	actor: Actor,
	incidentId: number,
	input: { outcome: string; reason: string },
	seenVersion: number
): void {
	const outcome = INCIDENT_OUTCOMES.find((one) => one === input.outcome);
	if (!outcome) throw new LedgerRefusal('wrong-value', 'Say what the incident turned out to be.');
	const reason = checkText('The reason', input.reason, { min: 10, max: 1000 });
	ledger.database
		.transaction(() => {
			const before = findIncident(ledger, incidentId);
			refuseStale(before, seenVersion);
			if (standingClosing(before))
				throw new LedgerRefusal('conflict', 'This incident is closed already; open it again first.');
			ledger.database
				.prepare(
					`INSERT INTO incident_closing (incident_id, outcome, reason, actor_id, at_ms)
					VALUES (?, ?, ?, ?, ?)`
				)
				.run(incidentId, outcome, reason, actor.personId, ledger.now());
			touched(ledger, actor, 'closed', incidentId, { outcome, reason });
		})
		.immediate();
}

/**
 * Opens a closed incident again, with the reason: it counts as a slip of its build until it is closed
 * anew. The closing before stays readable.
 *
 * @throws LedgerRefusal not-found; wrong-value without a reason; conflict when it is open or was changed
 *   meanwhile
 */
export function reopenIncident(
	ledger: Ledger,
	actor: Actor,
	incidentId: number,
	reason: string,
	seenVersion: number
): void {
	const cleaned = checkText('The reason', reason, { min: 3, max: 1000 });
	ledger.database
		.transaction(() => {
			const before = findIncident(ledger, incidentId);
			refuseStale(before, seenVersion);
			const closing = standingClosing(before);
			if (!closing) throw new LedgerRefusal('conflict', 'This incident is open.');
			ledger.database
				.prepare(
					'UPDATE incident_closing SET superseded_ms = ? WHERE incident_id = ? AND superseded_ms IS NULL'
				)
				.run(ledger.now(), incidentId);
			touched(ledger, actor, 'opened again', incidentId, { reason: cleaned, before: closing.outcome });
		})
		.immediate();
}

function refuseStale(before: IncidentRecord, seenVersion: number): void {
	if (before.rowVersion === seenVersion) return;
	throw new LedgerRefusal(
		'conflict',
		'Someone changed this incident while you were at it; nothing was overwritten. Open it again and look at what it says now.'
	);
}

function touched(
	ledger: Ledger,
	actor: Actor,
	action: string,
	incidentId: number,
	detail: { outcome?: IncidentOutcome; reason: string; before?: IncidentOutcome }
): void {
	ledger.database.prepare('UPDATE incident SET row_version = row_version + 1 WHERE id = ?').run(incidentId);
	leaveTrail(ledger, actor, action, 'incident', incidentId, detail);
}
