import { removeAccess } from '../access/removeAccess';
import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { findFacts, refuseLastOwner } from './changePerson';

/** Where the name still stands in words that people wrote, or in the names of files. */
export interface NameFound {
	table: string;
	column: string;
	rows: number;
}

/**
 * Takes a person's name and weight out of the ledger in one step: the name gives way to the code, all else
 * keeps the code, so no evidence is lost. Whoever sat at a browser under that name has to choose one again.
 * What is overwritten is overwritten on the disk too, as far as SQLite has it in hand; copies and earlier
 * backups are not reached.
 *
 * @returns where the name was also written by hand, to be looked at: notes, file names
 * @throws LedgerRefusal not-found; not-allowed for anybody but an owner and the person; conflict when it is
 *   done already or nobody would own the ledger
 */
export function anonymisePerson(ledger: Ledger, actor: Actor, personId: number): NameFound[] {
	const { database } = ledger;
	if (actor.role !== 'owner' && actor.personId !== personId)
		throw new LedgerRefusal('not-allowed', 'An owner anonymises others; everybody may anonymise themselves.');
	// zeros over what was there, also in the index of names
	database.pragma('secure_delete = ON');
	const found = database
		.transaction((): NameFound[] => {
			const person = findFacts(ledger, actor, personId);
			if (person.anonymised) throw new LedgerRefusal('conflict', 'This person is anonymised already.');
			refuseLastOwner(ledger, person);
			database
				.prepare(
					`UPDATE person SET name = 'Anonymised ' || code, weight_kg = NULL, anonymised_ms = ?,
						row_version = row_version + 1 WHERE id = ?`
				)
				.run(ledger.now(), personId);
			removeAccess(ledger, personId);
			leaveTrail(ledger, actor, 'anonymised', 'person', personId);
			return nameInText(ledger, person.name);
		})
		.immediate();
	// the old page is in the log until it is written back; busy readers may keep it there a while
	database.pragma('wal_checkpoint(TRUNCATE)');
	return found;
}

/** Very short names would be found everywhere. */
const SHORTEST_SEARCHED = 3;

function nameInText(ledger: Ledger, name: string): NameFound[] {
	if (name.length < SHORTEST_SEARCHED) return [];
	const columns = ledger.database
		.prepare<[], { table: string; column: string }>(
			`SELECT m.name AS "table", c.name AS "column" FROM sqlite_master m JOIN pragma_table_info(m.name) c
			WHERE m.type = 'table' AND c.type = 'TEXT' ORDER BY 1, 2`
		)
		.all();
	return columns.flatMap(({ table, column }) => {
		const { rows } = ledger.database
			.prepare<[string], { rows: number }>(
				`SELECT count(*) AS rows FROM "${table}" WHERE instr(lower("${column}"), lower(?)) > 0`
			)
			.get(name)!;
		return rows > 0 ? [{ table, column, rows }] : [];
	});
}
