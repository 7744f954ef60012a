/** One FIT file of a chain, as far as it can be read. Offsets count from the start of the upload. */
export interface FitPart {
	readonly start: number;
	/** first byte of the first message */
	readonly dataStart: number;
	/** one past the last whole message */
	readonly dataEnd: number;
	readonly records: number;
	readonly messages: number;
	/** definitions of the messages that describe developer fields: where their number stands */
	readonly descriptionNumberOffsets: readonly number[];
	/** stretches of nothing but records: first byte, one past the last, of each in turn */
	readonly recordRuns: readonly number[];
	/** some message counts its time on from the one before */
	readonly compressed: boolean;
	readonly damage: FitDamage | null;
}

/** What was lost of a part and why. */
export interface FitDamage {
	readonly kind: 'not-closed' | 'cut-off' | 'broken-inside' | 'bad-checksum';
	/** bytes that the file holds or states to hold and that could not be read */
	readonly lostBytes: number;
	/** what stands where, for the engineer */
	readonly detail: string;
}
