import type { Actor, Role } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { PersonView } from '../views';

const COLUMNS = 'id, name, code, role';

export function listPeople(ledger: Ledger): PersonView[] {
	return ledger.database.prepare<[], PersonView>(`SELECT ${COLUMNS} FROM person ORDER BY example, id`).all();
}

/** Who is known under this id; null when nobody is. */
export function findPerson(ledger: Ledger, personId: number): PersonView | null {
	return (
		ledger.database
			.prepare<[number], PersonView>(`SELECT ${COLUMNS} FROM person WHERE id = ? AND example = 0`)
			.get(personId) ?? null
	);
}

/** The same, unless that person was anonymised: nobody acts under such a code any more. */
export function findActivePerson(ledger: Ledger, personId: number): PersonView | null {
	const gone = ledger.database
		.prepare('SELECT 1 FROM person WHERE id = ? AND anonymised_ms IS NOT NULL')
		.get(personId);
	return gone ? null : findPerson(ledger, personId);
}

/**
 * The person of this name, made with the next free code when there is none. The first person of a ledger
 * is its owner, later ones are engineers: on loopback everybody sits at the workshop's own machine.
 *
 * @throws LedgerRefusal wrong-value for an empty or overlong name; conflict for one that an anonymised
 *   person or one of the example bears
 */
export function choosePerson(ledger: Ledger, name: string): PersonView {
	const cleaned = checkText('The name', name, { min: 1, max: 80 });
	return ledger.database
		.transaction((): PersonView => {
			const known = ledger.database
				.prepare<[string], PersonView & { anonymised: number; example: number }>(
					`SELECT ${COLUMNS}, anonymised_ms IS NOT NULL AS anonymised, example FROM person WHERE name = ?`
				)
				.get(cleaned);
			if (known?.anonymised || known?.example)
				throw new LedgerRefusal('conflict', 'This name stands for somebody else here: choose another one.');
			if (known) return { id: known.id, name: known.name, code: known.code, role: known.role };
			const person = addPerson(ledger, { name: cleaned, role: nextRole(ledger), example: false });
			leaveTrail(ledger, actorOf(person), 'chose a name', 'person', person.id);
			return person;
		})
		.immediate();
}

export function actorOf(person: PersonView): Actor {
	return { personId: person.id, name: person.name, role: person.role };
}

/** A row with the code wanted, or, where it is missing or taken, the next free "P1", "P2" ... */
export function addPerson(
	ledger: Ledger,
	input: { name: string; role: Role; example: boolean; code?: string }
): PersonView {
	const code = input.code && isFree(ledger, input.code) ? input.code : nextCode(ledger);
	const { lastInsertRowid } = ledger.database
		.prepare('INSERT INTO person (name, code, role, example, created_ms) VALUES (?, ?, ?, ?, ?)')
		.run(input.name, code, input.role, input.example ? 1 : 0, ledger.now());
	return { id: Number(lastInsertRowid), name: input.name, code, role: input.role };
}

function nextRole(ledger: Ledger): Role {
	const owner = ledger.database
		.prepare("SELECT 1 FROM person WHERE role = 'owner' AND example = 0 AND anonymised_ms IS NULL LIMIT 1")
		.get();
	return owner ? 'engineer' : 'owner';
}

function isFree(ledger: Ledger, code: string): boolean {
	return !ledger.database.prepare('SELECT 1 FROM person WHERE code = ?').get(code);
}

function nextCode(ledger: Ledger): string {
	let number = 1;
	while (!isFree(ledger, `P${number}`)) number++;
	return `P${number}`;
}

/** The person as the one who acts; null when there is no such person. */
export function findPersonAsActor(ledger: Ledger, personId: number): Actor | null {
	const person = findPerson(ledger, personId);
	return person && actorOf(person);
}
