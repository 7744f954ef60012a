import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { ownerHasPassword } from './setPassword';

/** Nobody comes in as this person any more: no password, no link, no browser. Within a transaction of the caller. */
export function removeAccess(ledger: Ledger, personId: number): void {
	for (const table of ['session', 'access_link', 'person_password'])
		ledger.database.prepare(`DELETE FROM ${table} WHERE person_id = ?`).run(personId);
}

/**
 * The same as a step of its own, for a person who left or a phone that was lost.
 *
 * @throws LedgerRefusal not-allowed for anybody but an owner; conflict for the last owner with a password
 */
export function endAccess(ledger: Ledger, actor: Actor, personId: number): void {
	if (actor.role !== 'owner')
		throw new LedgerRefusal('not-allowed', 'Only an owner decides who may come in.');
	ledger.database
		.transaction(() => {
			const couldComeIn = ownerHasPassword(ledger);
			removeAccess(ledger, personId);
			if (couldComeIn && !ownerHasPassword(ledger))
				throw new LedgerRefusal(
					'conflict',
					'One owner with a password has to stay, or nobody could come in.'
				);
			leaveTrail(ledger, actor, 'ended all access of', 'person', personId);
		})
		.immediate();
}
