import type { Actor, Role } from '../actor';
import type { Ledger } from '../ledger/openLedger';

/** A person as the page of people shows it: the only page with names. */
export interface PersonFacts {
	id: number;
	name: string;
	/** what stands for the person everywhere else */
	code: string;
	role: Role;
	/** rider's weight without bike, kg; null = not said */
	weightKg: number | null;
	anonymised: boolean;
	rides: number;
	example: boolean;
	rowVersion: number;
}

const SELECT = `SELECT p.id, p.name, p.code, p.role, p.weight_kg AS weightKg,
	p.anonymised_ms IS NOT NULL AS anonymised, p.example, p.row_version AS rowVersion,
	(SELECT count(*) FROM ride r WHERE r.rider_id = p.id) AS rides FROM person p`;

type StoredPerson = Omit<PersonFacts, 'anonymised' | 'example'> & { anonymised: number; example: number };

/** Everybody; a rider sees the own row alone. */
export function peopleFacts(ledger: Ledger, actor: Actor): PersonFacts[] {
	const people = ledger.database
		.prepare<[], StoredPerson>(`${SELECT} ORDER BY p.example, p.id`)
		.all()
		.map((stored) => ({ ...stored, anonymised: stored.anonymised === 1, example: stored.example === 1 }));
	return actor.role === 'rider' ? people.filter(({ id }) => id === actor.personId) : people;
}
