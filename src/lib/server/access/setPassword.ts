import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { actorOf, findActivePerson } from '../people/people';
import { LedgerRefusal } from '../refusal';
import type { PersonView } from '../views';
import { noteAttempt } from './attempts';
import { findLink } from './links';
import { checkPassword, hashPassword } from './passwordHash';
import { refuseWeakPassword } from './passwordRule';
import { endPasswordSessions } from './sessions';

/**
 * Gives a person a password; whoever was in by the one before is out. Who may do so was decided by whoever
 * calls: the terminal of the ledger's machine, a link used once, or the password before.
 *
 * @param options.keepSession the browser in which it was changed stays in
 * @param options.within what else belongs to the same step
 * @throws LedgerRefusal not-found; wrong-value for a weak password
 */
export async function setPassword(
	ledger: Ledger,
	actor: Actor,
	personId: number,
	password: string,
	options: { keepSession?: number; within?: () => void } = {}
): Promise<void> {
	const person = findActivePerson(ledger, personId);
	if (!person) throw new LedgerRefusal('not-found', 'There is no such person.');
	refuseWeakPassword(password, person.name);
	const hash = await hashPassword(password);
	ledger.database
		.transaction(() => {
			options.within?.();
			storeHash(ledger, personId, hash);
			endPasswordSessions(ledger, personId, options.keepSession ?? null);
			leaveTrail(ledger, actor, 'set the password of', 'person', personId);
		})
		.immediate();
}

/**
 * Sets a password by a link that is used up with it.
 *
 * @returns whose it is
 * @throws LedgerRefusal not-allowed when the link opens nothing; too-many; wrong-value
 */
export async function setPasswordByLink(
	ledger: Ledger,
	input: { token: string; password: string; address: string }
): Promise<PersonView> {
	const succeeded = noteAttempt(ledger, { account: `a link of ${input.address}`, address: input.address });
	const link = findLink(ledger, input.token, 'password');
	if (!link)
		throw new LedgerRefusal(
			'not-allowed',
			'This link was used already, is older than an hour or was withdrawn. Ask an owner for a new one.'
		);
	succeeded();
	await setPassword(ledger, actorOf(link.person), link.person.id, input.password, {
		within: () => {
			const { changes } = ledger.database
				.prepare(
					'UPDATE access_link SET ended_ms = @now, last_used_ms = @now WHERE id = @id AND ended_ms IS NULL'
				)
				.run({ now: ledger.now(), id: link.id });
			if (changes === 0)
				throw new LedgerRefusal('not-allowed', 'This link was used already. Ask an owner for a new one.');
		}
	});
	return link.person;
}

/**
 * Changes the own password; the old one is asked for, since a browser may have been left open.
 *
 * @throws LedgerRefusal not-allowed for a wrong old password; too-many; wrong-value
 */
export async function changePassword(
	ledger: Ledger,
	actor: Actor,
	input: { before: string; after: string; address: string; sessionId: number }
): Promise<void> {
	const succeeded = noteAttempt(ledger, {
		account: `person ${actor.personId}`,
		address: input.address
	});
	const { right } = await checkPassword(input.before, storedHash(ledger, actor.personId));
	if (!right) throw new LedgerRefusal('not-allowed', 'The password until now is not right.');
	succeeded();
	await setPassword(ledger, actor, actor.personId, input.after, { keepSession: input.sessionId });
}

/**
 * Takes a person's password away: nobody comes in by it any more, and whoever was in is out.
 *
 * @throws LedgerRefusal not-allowed for anybody but an owner; conflict for the last owner with a password
 */
export function removePassword(ledger: Ledger, actor: Actor, personId: number): void {
	if (actor.role !== 'owner')
		throw new LedgerRefusal('not-allowed', 'Only an owner decides who may come in.');
	ledger.database
		.transaction(() => {
			const { changes } = ledger.database
				.prepare('DELETE FROM person_password WHERE person_id = ?')
				.run(personId);
			if (changes === 0) return;
			if (!ownerHasPassword(ledger))
				throw new LedgerRefusal(
					'conflict',
					'One owner with a password has to stay, or nobody could come in.'
				);
			endPasswordSessions(ledger, personId, null);
			leaveTrail(ledger, actor, 'took away the password of', 'person', personId);
		})
		.immediate();
}

/** Whether somebody could come in and let the others in. */
export function ownerHasPassword(ledger: Ledger): boolean {
	const row = ledger.database
		.prepare(
			`SELECT 1 FROM person_password w JOIN person p ON p.id = w.person_id
			WHERE p.role = 'owner' AND p.example = 0 AND p.anonymised_ms IS NULL LIMIT 1`
		)
		.get();
	return row !== undefined;
}

export function storedHash(ledger: Ledger, personId: number): string | null {
	return (
		ledger.database
			.prepare<[number], string>('SELECT hash FROM person_password WHERE person_id = ?')
			.pluck()
			.get(personId) ?? null
	);
}

export function storeHash(ledger: Ledger, personId: number, hash: string): void {
	ledger.database
		.prepare(
			`INSERT INTO person_password (person_id, hash, set_ms) VALUES (?, ?, ?)
			ON CONFLICT (person_id) DO UPDATE SET hash = excluded.hash, set_ms = excluded.set_ms`
		)
		.run(personId, hash, ledger.now());
}
