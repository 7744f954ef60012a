import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant, PersonView } from '../views';
import { accessSettings, type AccessSettings } from './accessSettings';
import { sessionsOf, type SessionView } from './sessions';

/** How a person may come in. */
export interface PersonAccess extends PersonView {
	/** null = no password */
	passwordSince: Instant | null;
	/** the personal link that stands; null = none */
	link: { since: Instant; lastUsed: Instant | null } | null;
	sessions: SessionView[];
}

export interface AccessView {
	people: PersonAccess[];
	settings: AccessSettings;
}

/** Everybody who could come in, owners first. */
export function accessView(ledger: Ledger): AccessView {
	const people = ledger.database
		.prepare<[], PersonView & { passwordMs: number | null; linkMs: number | null; usedMs: number | null }>(
			`SELECT p.id, p.name, p.code, p.role, w.set_ms AS passwordMs, l.created_ms AS linkMs,
				l.last_used_ms AS usedMs FROM person p
			LEFT JOIN person_password w ON w.person_id = p.id
			LEFT JOIN access_link l ON l.person_id = p.id AND l.purpose = 'rides' AND l.ended_ms IS NULL
			WHERE p.example = 0 AND p.anonymised_ms IS NULL
			ORDER BY CASE p.role WHEN 'owner' THEN 0 WHEN 'engineer' THEN 1 ELSE 2 END, p.name`
		)
		.all()
		.map(({ passwordMs, linkMs, usedMs, ...person }) => ({
			...person,
			passwordSince: passwordMs === null ? null : toInstant(passwordMs),
			link:
				linkMs === null
					? null
					: { since: toInstant(linkMs), lastUsed: usedMs === null ? null : toInstant(usedMs) },
			sessions: sessionsOf(ledger, person.id)
		}));
	return { people, settings: accessSettings(ledger) };
}
