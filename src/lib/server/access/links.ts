import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { findActivePerson } from '../people/people';
import { LedgerRefusal } from '../refusal';
import type { PersonView } from '../views';
import { newToken, tokenHash } from './accessToken';

export type LinkPurpose = 'password' | 'rides';

/** a link to set a password is used at once or not at all */
export const PASSWORD_LINK_MINUTES = 60;

/**
 * Makes a link for a person; an earlier one of the same purpose ends. The token is told this once and can
 * never be read again.
 *
 * @param purpose 'password': once, within the hour, to set one; 'rides': hand in and see own rides, until withdrawn
 * @throws LedgerRefusal not-allowed for anybody but an owner; not-found
 */
export function makeLink(
	ledger: Ledger,
	actor: Actor,
	personId: number,
	purpose: LinkPurpose
): { token: string } {
	refuseAllButOwner(actor);
	const token = newToken();
	ledger.database
		.transaction(() => {
			if (!findActivePerson(ledger, personId))
				throw new LedgerRefusal('not-found', 'There is no such person.');
			endLinks(ledger, personId, purpose);
			const now = ledger.now();
			ledger.database
				.prepare(
					'INSERT INTO access_link (person_id, purpose, token_sha256, created_ms, expires_ms) VALUES (?, ?, ?, ?, ?)'
				)
				.run(
					personId,
					purpose,
					tokenHash(token),
					now,
					purpose === 'password' ? now + PASSWORD_LINK_MINUTES * 60_000 : null
				);
			leaveTrail(ledger, actor, `made a link to ${WORDS[purpose]} for`, 'person', personId);
		})
		.immediate();
	return { token };
}

/**
 * Ends a person's link, and with it every browser that came in by it.
 *
 * @throws LedgerRefusal not-allowed for anybody but an owner
 */
export function withdrawLink(ledger: Ledger, actor: Actor, personId: number, purpose: LinkPurpose): void {
	refuseAllButOwner(actor);
	ledger.database
		.transaction(() => {
			if (endLinks(ledger, personId, purpose) > 0)
				leaveTrail(ledger, actor, `withdrew the link to ${WORDS[purpose]} of`, 'person', personId);
		})
		.immediate();
}

/** The link that a token opens and whose it is; null when there is none (any more). */
export function findLink(
	ledger: Ledger,
	token: string,
	purpose: LinkPurpose
): { id: number; person: PersonView } | null {
	const row = ledger.database
		.prepare<[string, string, number], { id: number; personId: number }>(
			`SELECT id, person_id AS personId FROM access_link WHERE token_sha256 = ? AND purpose = ?
				AND ended_ms IS NULL AND (expires_ms IS NULL OR expires_ms > ?)`
		)
		.get(tokenHash(token), purpose, ledger.now());
	const person = row && findActivePerson(ledger, row.personId);
	return row && person ? { id: row.id, person } : null;
}

/** @returns how many ended */
function endLinks(ledger: Ledger, personId: number, purpose: LinkPurpose): number {
	return ledger.database
		.prepare('UPDATE access_link SET ended_ms = ? WHERE person_id = ? AND purpose = ? AND ended_ms IS NULL')
		.run(ledger.now(), personId, purpose).changes;
}

function refuseAllButOwner(actor: Actor): void {
	if (actor.role !== 'owner')
		throw new LedgerRefusal('not-allowed', 'Only an owner decides who may come in.');
}

const WORDS: Readonly<Record<LinkPurpose, string>> = {
	password: 'set a password',
	rides: 'hand in rides'
};
