import { actorOf, findActivePerson } from '../people/people';
import type { Actor } from '../actor';
import type { Ledger } from '../ledger/openLedger';
import { toInstant } from '../ledger/instants';
import { writeUnsynced } from '../ledger/writeUnsynced';
import type { Instant } from '../views';
import { accessSettings } from './accessSettings';
import { newToken, tokenHash } from './accessToken';

export type Device = 'phone' | 'computer';
const DAY_MS = 86_400_000;
/** a rider's phone stays in for so long after it was last used */
const LINK_SESSION_DAYS = 180;
/** how often it is written down that a session is in use */
const TOUCH_EVERY_MS = 5 * 60_000;

export interface SessionView {
	id: number;
	device: Device;
	since: Instant;
	lastSeen: Instant;
	/** by a rider's own link, not by password */
	byLink: boolean;
}

/**
 * Lets a browser in.
 *
 * @param linkId the rider's link that it came by; null = by password
 * @returns what its cookie must hold, and for how long
 */
export function openSession(
	ledger: Ledger,
	input: { personId: number; linkId: number | null; device: Device }
): { token: string; maxAgeS: number } {
	const token = newToken();
	const now = ledger.now();
	const days = input.linkId === null ? accessSettings(ledger).sessionDays : LINK_SESSION_DAYS;
	ledger.database
		.prepare(
			`INSERT INTO session (token_sha256, person_id, link_id, device, created_ms, seen_ms, expires_ms)
			VALUES (?, ?, ?, ?, ?, ?, ?)`
		)
		.run(tokenHash(token), input.personId, input.linkId, input.device, now, now, now + days * DAY_MS);
	return { token, maxAgeS: days * 86_400 };
}

/** not ended, not run out, and the link that it came by still stands */
const STANDS = `s.ended_ms IS NULL AND s.expires_ms > @now AND (s.link_id IS NULL OR EXISTS
	(SELECT 1 FROM access_link l WHERE l.id = s.link_id AND l.ended_ms IS NULL))`;

/** Who a cookie stands for, with the role of this moment; null when it opens nothing (any more). */
export function actorOfSession(
	ledger: Ledger,
	token: string | undefined
): { sessionId: number; actor: Actor; byLink: boolean } | null {
	if (!token || token.length > 100) return null;
	const now = ledger.now();
	const row = ledger.database
		.prepare<[object], { id: number; personId: number; linkId: number | null; seenMs: number }>(
			`SELECT s.id, s.person_id AS personId, s.link_id AS linkId, s.seen_ms AS seenMs FROM session s WHERE s.token_sha256 = @hash AND ${STANDS}`
		)
		.get({ hash: tokenHash(token), now });
	const person = row && findActivePerson(ledger, row.personId);
	if (!row || !person) return null;
	if (now - row.seenMs > TOUCH_EVERY_MS) touch(ledger, row.id, row.linkId !== null);
	const actor = actorOf(person);
	// a link is passed on more easily than a password: it never opens more than a rider may do
	return {
		sessionId: row.id,
		actor: row.linkId === null ? actor : { ...actor, role: 'rider' },
		byLink: row.linkId !== null
	};
}

/** A page can be read also where nothing can be written, on a full disk for instance: the next request tries again. */
function touch(ledger: Ledger, id: number, byLink: boolean): void {
	const write = ledger.database.prepare(
		`UPDATE session SET seen_ms = @now,
			expires_ms = CASE WHEN @byLink THEN max(expires_ms, @now + @stays) ELSE expires_ms END WHERE id = @id`
	);
	const values = { id, now: ledger.now(), byLink: byLink ? 1 : 0, stays: LINK_SESSION_DAYS * DAY_MS };
	try {
		writeUnsynced(ledger, () => write.run(values));
	} catch (error) {
		if (!String((error as { code?: unknown }).code).startsWith('SQLITE_')) throw error;
	}
}

/** The browsers that a person is in with now, the one used last first. */
export function sessionsOf(ledger: Ledger, personId: number): SessionView[] {
	return ledger.database
		.prepare<[object], { id: number; device: Device; createdMs: number; seenMs: number; byLink: number }>(
			`SELECT s.id, s.device, s.created_ms AS createdMs, s.seen_ms AS seenMs, s.link_id IS NOT NULL AS byLink
			FROM session s WHERE s.person_id = @personId AND ${STANDS} ORDER BY s.seen_ms DESC, s.id DESC`
		)
		.all({ personId, now: ledger.now() })
		.map(({ createdMs, seenMs, byLink, ...row }) => ({
			...row,
			since: toInstant(createdMs),
			lastSeen: toInstant(seenMs),
			byLink: byLink === 1
		}));
}

/** Ends one session; the next request of its browser finds itself outside. */
export function endSession(ledger: Ledger, sessionId: number): void {
	ledger.database
		.prepare('UPDATE session SET ended_ms = ? WHERE id = ? AND ended_ms IS NULL')
		.run(ledger.now(), sessionId);
	removeOld(ledger);
}

/** Ends all sessions of a person by password, but for one. */
export function endPasswordSessions(ledger: Ledger, personId: number, exceptId: number | null): void {
	ledger.database
		.prepare(
			`UPDATE session SET ended_ms = ? WHERE person_id = ? AND link_id IS NULL AND ended_ms IS NULL AND id IS NOT ?`
		)
		.run(ledger.now(), personId, exceptId);
}

/** What has been over for a month says nothing to anybody. */
function removeOld(ledger: Ledger): void {
	const before = ledger.now() - 30 * DAY_MS;
	ledger.database.prepare('DELETE FROM session WHERE ended_ms < ? OR expires_ms < ?').run(before, before);
}
