export type Role = 'owner' | 'engineer' | 'rider';

/** Who writes: every write to the ledger names one. */
export interface Actor {
	readonly personId: number;
	readonly name: string;
	readonly role: Role;
}
