import type { FileRefusal } from '../analysis/messages';

/** How much an archive may ask of this machine. */
export interface UnpackLimits {
	/** files in it */
	readonly members: number;
	/** bytes of all of them together, unpacked */
	readonly totalBytes: number;
	/** bytes of one of them, unpacked */
	readonly memberBytes: number;
	/** unpacked bytes for each packed one, of one member */
	readonly ratio: number;
	/** folders within folders */
	readonly depth: number;
}

export interface UnpackRequest {
	readonly kind: 'unpack';
	/** absolute path of the archive */
	readonly path: string;
	/** where members go: the number of each is added to this path */
	readonly into: string;
	readonly limits: UnpackLimits;
	/** members of which the ledger knows already what became of them */
	readonly recorded: readonly number[];
}

/** One file of an archive as the archive's list tells it. */
export interface MemberFacts {
	/** place in the list, 0 = first */
	readonly member: number;
	/** with its folders, as the archive has it; shown, never used as a path */
	readonly name: string;
	/** unpacked */
	readonly bytes: number;
}

export type MemberOutcome =
	| { readonly kind: 'written'; readonly path: string; readonly sha256: string; readonly bytes: number }
	| { readonly kind: 'refused'; readonly refusal: FileRefusal }
	/** nothing that was meant as a ride */
	| { readonly kind: 'left out'; readonly sentence: string };

/** What the child says; after 'member' it waits until it is told to go on. */
export type UnpackMessage =
	| { readonly kind: 'begun'; readonly facts: MemberFacts }
	| { readonly kind: 'member'; readonly facts: MemberFacts; readonly outcome: MemberOutcome }
	| { readonly kind: 'end' }
	/** the archive as a whole is not taken */
	| { readonly kind: 'refused'; readonly refusal: FileRefusal }
	/** a fault of the program or the machine, not of the archive */
	| { readonly kind: 'broke'; readonly detail: string };
