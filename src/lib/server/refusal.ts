/** Why the ledger does not do what was asked; stable words, for tests and terminal commands. */
export type LedgerRefusalCode =
	| 'newer-ledger'
	| 'ledger-in-use'
	| 'ledger-not-migrated'
	| 'folder-not-writable'
	| 'ledger-damaged'
	| 'address-not-allowed'
	| 'wrong-setting'
	| 'port-busy'
	| 'port-refused'
	| 'not-found'
	| 'wrong-value'
	| 'overlap'
	| 'conflict'
	| 'too-large'
	| 'disk-full'
	| 'wrong-offset'
	| 'incomplete'
	| 'not-allowed'
	| 'too-many'
	| 'no-password';

/**
 * Thrown by the functions of src/lib/server when a request cannot be met. The sentence is meant for the
 * person who asked; pages and commands show it and nothing else.
 */
export class LedgerRefusal extends Error {
	constructor(
		readonly code: LedgerRefusalCode,
		/** what is wrong and what to do, one plain sentence */
		readonly sentence: string
	) {
		super(sentence);
		this.name = 'LedgerRefusal';
	}
}
