import type { Ledger } from '../ledger/openLedger';

/** A name for something of the example: the workshop may have one of this name itself. */
export function freeName(ledger: Ledger, table: 'wheel' | 'build' | 'bike', name: string): string {
	const taken = ledger.database.prepare(`SELECT 1 FROM ${table} WHERE name = ?`);
	let free = name;
	for (let number = 1; taken.get(free); number++)
		free = `${name} (example${number === 1 ? '' : ` ${number}`})`;
	return free;
}
