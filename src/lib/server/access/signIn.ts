import type { Ledger } from '../ledger/openLedger';
import { findActivePerson } from '../people/people';
import { LedgerRefusal } from '../refusal';
import { noteAttempt } from './attempts';
import { findLink } from './links';
import { checkPassword, hashPassword } from './passwordHash';
import { openSession, type Device } from './sessions';
import { storedHash } from './setPassword';

/** What a browser's cookie must hold from now on. */
export interface Opened {
	token: string;
	maxAgeS: number;
}

/**
 * Lets somebody in by name (or code) and password. Every refusal says the same and takes the same work, so that
 * nobody learns whose name is known here.
 *
 * @throws LedgerRefusal not-allowed; too-many
 */
export async function signIn(
	ledger: Ledger,
	input: { name: string; password: string; address: string; device: Device }
): Promise<Opened> {
	const personId = ledger.database
		.prepare<[object], number>(
			`SELECT id FROM person WHERE (name = @name OR code = upper(@name)) AND example = 0
				AND anonymised_ms IS NULL ORDER BY name = @name DESC LIMIT 1`
		)
		.pluck()
		.get({ name: input.name.normalize('NFC').trim() });
	const account = personId === undefined ? `nobody ${input.name.slice(0, 200)}` : `person ${personId}`;
	const succeeded = noteAttempt(ledger, { account, address: input.address });
	const stored = personId === undefined ? null : storedHash(ledger, personId);
	// nobody's password is longer, and hashing megabytes would be work for free
	const { right, stale } = await checkPassword(input.password.slice(0, 1000), stored);
	if (!right || personId === undefined || stored !== storedHash(ledger, personId))
		throw new LedgerRefusal('not-allowed', 'Name and password do not belong together.');
	succeeded();
	if (stale) await renewHash(ledger, personId, stored, input.password);
	return openSession(ledger, { personId, linkId: null, device: input.device });
}

/** The cost of a hash is raised when the password is at hand; nothing else about the password changes. */
async function renewHash(ledger: Ledger, personId: number, before: string | null, password: string) {
	const hash = await hashPassword(password);
	ledger.database
		.prepare('UPDATE person_password SET hash = ? WHERE person_id = ? AND hash = ?')
		.run(hash, personId, before);
}

/**
 * Lets a rider's browser in by the rider's own link, as often as the link stands.
 *
 * @throws LedgerRefusal not-allowed; too-many
 */
export function comeInByLink(
	ledger: Ledger,
	input: { token: string; address: string; device: Device }
): Opened {
	const succeeded = noteAttempt(ledger, { account: `a link of ${input.address}`, address: input.address });
	const link = findLink(ledger, input.token, 'rides');
	if (!link || !findActivePerson(ledger, link.person.id))
		throw new LedgerRefusal(
			'not-allowed',
			'This link does not stand any more. Ask the workshop for a new one; your rides are kept.'
		);
	succeeded();
	ledger.database.prepare('UPDATE access_link SET last_used_ms = ? WHERE id = ?').run(ledger.now(), link.id);
	return openSession(ledger, { personId: link.person.id, linkId: link.id, device: input.device });
}
