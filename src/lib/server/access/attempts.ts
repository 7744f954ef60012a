import { createHash } from 'node:crypto';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { accessSettings } from './accessSettings';

/** Who tries: what account is meant (a person, or what was typed) and from where. */
export interface Trying {
	readonly account: string;
	/** the other end's address */
	readonly address: string;
}

/**
 * Lets nobody try for ever. Attempts are counted by account, so that many machines together cannot guess one
 * password, and by address, so that one machine cannot try one password on all accounts. They lie in the
 * ledger: a restart does not forget them.
 *
 * @throws LedgerRefusal too-many
 */
export function refuseTooManyAttempts(ledger: Ledger, trying: Trying): void {
	const settings = accessSettings(ledger);
	const since = ledger.now() - settings.attemptMinutes * 60_000;
	const [account, address] = keysOf(trying);
	if (
		count(ledger, account, since) < settings.attemptsPerAccount &&
		count(ledger, address, since) < settings.attemptsPerAddress
	)
		return;
	throw new LedgerRefusal(
		'too-many',
		`Too many attempts that failed. Try again in ${settings.attemptMinutes} minutes.`
	);
}

/**
 * Counts an attempt before its outcome is known, so that attempts made at once cannot slip past the limit.
 *
 * @returns takes it back: the attempt succeeded
 */
export function noteAttempt(ledger: Ledger, trying: Trying): () => void {
	const { database } = ledger;
	const oldest = ledger.now() - accessSettings(ledger).attemptMinutes * 60_000;
	const ids = database
		.transaction(() => {
			refuseTooManyAttempts(ledger, trying);
			database.prepare('DELETE FROM access_attempt WHERE at_ms < ?').run(oldest);
			const insert = database.prepare('INSERT INTO access_attempt (key, at_ms) VALUES (?, ?)');
			return keysOf(trying).map((key) => insert.run(key, ledger.now()).lastInsertRowid);
		})
		.immediate();
	return () => {
		for (const id of ids) database.prepare('DELETE FROM access_attempt WHERE id = ?').run(id);
	};
}

function count(ledger: Ledger, key: string, sinceMs: number): number {
	return ledger.database
		.prepare<[string, number], number>('SELECT count(*) FROM access_attempt WHERE key = ? AND at_ms >= ?')
		.pluck()
		.get(key, sinceMs)!;
}

/** hashed: neither what was typed into the field for the name nor where somebody sat lies in the ledger */
function keysOf({ account, address }: Trying): [string, string] {
	const hashed = (kind: string, text: string) =>
		`${kind}-${createHash('sha256').update(`${kind} ${text}`).digest('hex').slice(0, 32)}`;
	return [
		hashed('account', account.normalize('NFKC').trim().toLowerCase()),
		hashed('address', network(address))
	];
}

/** whoever has one IPv6 address has the 2^64 beside it as well */
function network(address: string): string {
	const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address);
	if (mapped) return mapped[1];
	return address.includes(':') ? address.split(':').slice(0, 4).join(':') : address;
}
