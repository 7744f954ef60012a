import type { Actor, Role } from '../actor';
import { checkNumber } from '../ledger/checkNumber';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { refuseStale } from '../ledger/refuseStale';
import { LedgerRefusal } from '../refusal';
import { addPerson } from './people';
import { peopleFacts, type PersonFacts } from './personFacts';

const ROLES: readonly Role[] = ['owner', 'engineer', 'rider'];

export interface PersonInput {
	name: string;
	role: Role;
	/** kg, 20 to 250 */
	weightKg?: number | null;
}

/**
 * Writes down a person who did not choose a name here, such as a rider who only hands in files.
 *
 * @returns id of the new person
 * @throws LedgerRefusal wrong-value; not-allowed for riders, and for all but owners when it is an owner;
 *   conflict when the name is taken
 */
export function createPerson(ledger: Ledger, actor: Actor, input: PersonInput): number {
	if (actor.role === 'rider') throw new LedgerRefusal('not-allowed', 'Riders do not add people.');
	const { name, role, weightKg } = checked(input);
	refuseRole(actor, 'rider', role);
	return ledger.database
		.transaction((): number => {
			refuseTaken(ledger, name, null);
			const { id } = addPerson(ledger, { name, role, example: false });
			ledger.database.prepare('UPDATE person SET weight_kg = ? WHERE id = ?').run(weightKg, id);
			leaveTrail(ledger, actor, 'created', 'person', id, { role });
			return id;
		})
		.immediate();
}

/**
 * Corrects a person. The trail says that name or weight changed, never to what: they stand in one table.
 *
 * @param seenVersion row version that the form was filled from
 * @throws LedgerRefusal not-found; not-allowed when a rider means somebody else, or a role is changed by
 *   anybody but an owner; conflict for a taken name, an older form or the last owner
 */
export function updatePerson(
	ledger: Ledger,
	actor: Actor,
	personId: number,
	input: PersonInput,
	seenVersion: number
): void {
	const after = checked(input);
	ledger.database
		.transaction(() => {
			const before = findFacts(ledger, actor, personId);
			if (before.anonymised) throw new LedgerRefusal('conflict', 'This person is anonymised.');
			refuseStale(ledger, 'person', personId, before.rowVersion, seenVersion);
			if (after.role !== before.role) {
				refuseRole(actor, before.role, after.role);
				refuseLastOwner(ledger, before);
			}
			if (after.name.toLowerCase() !== before.name.toLowerCase()) refuseTaken(ledger, after.name, personId);
			const changed = {
				...(after.name === before.name ? {} : { name: 'changed' }),
				...(after.weightKg === before.weightKg ? {} : { weight: 'changed' }),
				...(after.role === before.role ? {} : { role: { before: before.role, after: after.role } })
			};
			if (Object.keys(changed).length === 0) return;
			ledger.database
				.prepare(
					`UPDATE person SET name = @name, role = @role, weight_kg = @weightKg,
						row_version = row_version + 1 WHERE id = @personId`
				)
				.run({ ...after, personId });
			leaveTrail(ledger, actor, 'corrected', 'person', personId, changed);
		})
		.immediate();
}

/** @throws LedgerRefusal not-found; not-allowed for a rider who means somebody else */
export function findFacts(ledger: Ledger, actor: Actor, personId: number): PersonFacts {
	const person = peopleFacts(ledger, { ...actor, role: 'owner' }).find(({ id }) => id === personId);
	if (!person) throw new LedgerRefusal('not-found', 'There is no such person.');
	if (actor.role === 'rider' && personId !== actor.personId)
		throw new LedgerRefusal('not-allowed', 'Riders change only what is written down of themselves.');
	return person;
}

/** The workshop keeps one owner at least. */
export function refuseLastOwner(ledger: Ledger, person: PersonFacts): void {
	if (person.role !== 'owner' || person.example) return;
	const others = ledger.database
		.prepare(
			`SELECT 1 FROM person WHERE role = 'owner' AND example = 0 AND anonymised_ms IS NULL AND id <> ? LIMIT 1`
		)
		.get(person.id);
	if (!others)
		throw new LedgerRefusal('conflict', 'The ledger needs an owner: make somebody else one first.');
}

function checked(input: PersonInput) {
	if (!ROLES.includes(input.role))
		throw new LedgerRefusal('wrong-value', `A role is one of: ${ROLES.join(', ')}.`);
	return {
		name: checkText('The name', input.name, { min: 1, max: 80 }),
		role: input.role,
		weightKg: checkNumber('The weight', input.weightKg, { min: 20, max: 250, unit: 'kg' })
	};
}

function refuseRole(actor: Actor, before: Role, after: Role): void {
	if (actor.role === 'owner' || (before === 'rider' && after === 'rider')) return;
	throw new LedgerRefusal('not-allowed', 'Only an owner gives and takes roles.');
}

function refuseTaken(ledger: Ledger, name: string, exceptId: number | null): void {
	const other = ledger.database
		.prepare('SELECT 1 FROM person WHERE name = ? AND id IS NOT ?')
		.get(name, exceptId);
	if (other) throw new LedgerRefusal('conflict', 'Somebody of this name is in the ledger already.');
}
