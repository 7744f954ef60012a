import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { findPersonAsActor } from '../people/people';

/** an event whose overrun differs by more from what was judged is another one (common practice, no source) */
const SAME_WITHIN_DEG = 15;
const SAME_WITHIN_SHARE = 0.1;

/**
 * After a table was read by other columns: a verdict stands only where an event of the same kind and size is still
 * at its time. The others stay in the ledger as set aside, and what is there now is asked again. Belongs in the
 * caller's transaction.
 */
export function setAsideVerdicts(ledger: Ledger, rideId: number, version: number): void {
	const { database } = ledger;
	const changed = database
		.prepare<[object], { id: number }>(
			`SELECT v.id FROM verdict v
			LEFT JOIN slip_event e ON e.verdict_id = v.id AND e.version = @version
			WHERE v.ride_id = @rideId AND v.superseded_ms IS NULL AND (e.id IS NULL OR e.kind <> v.kind
				OR abs(e.overrun_crank_deg - v.overrun_crank_deg)
					> max(@deg, @share * v.overrun_crank_deg))`
		)
		.all({ rideId, version, deg: SAME_WITHIN_DEG, share: SAME_WITHIN_SHARE });
	if (changed.length === 0) return;
	for (const { id } of changed) {
		database.prepare('UPDATE verdict SET superseded_ms = ? WHERE id = ?').run(ledger.now(), id);
		database.prepare('UPDATE slip_event SET verdict_id = NULL WHERE verdict_id = ?').run(id);
	}
	const actor = namedBy(ledger, rideId);
	if (actor)
		leaveTrail(ledger, actor, 'set verdicts aside on', 'ride', rideId, {
			why: 'read by other columns, these events are others',
			verdicts: changed.map(({ id }) => id)
		});
}

/** Whose answer it was. */
function namedBy(ledger: Ledger, rideId: number): Actor | null {
	const personId = ledger.database
		.prepare<[string, string], number>(
			`SELECT actor_id FROM trail WHERE subject = 'ride' AND subject_id = ? AND action = ?
			ORDER BY id DESC LIMIT 1`
		)
		.pluck()
		.get(String(rideId), NAMED_ANEW);
	return personId === undefined ? null : findPersonAsActor(ledger, personId);
}

/** how the trail calls it that a ride's columns were named anew */
export const NAMED_ANEW = 'named the columns anew of';
