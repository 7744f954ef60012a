import { sameText, type BillEntry } from './bill';

/** A line of the predecessor and the line that it has become; null = there is none. */
export type BillPair = [BillEntry, BillEntry] | [null, BillEntry] | [BillEntry, null];

/**
 * Finds for each line of a bill the line of the predecessor's bill that it goes back to: the same piece
 * (number and serial), else the same part in all, else the same number, else the only part left of that
 * kind on both sides.
 *
 * @returns pairs in the order of `after`, then the lines of `before` that nothing goes back to
 * @example a bill [ring A, spring] against [ring B]: [[ring A, ring B], [spring, null]]
 * Source: common practice, no source.
 */
export function pairBillEntries(before: readonly BillEntry[], after: readonly BillEntry[]): BillPair[] {
	const left = new Set(before);
	const found = new Map<BillEntry, BillEntry>();
	for (const same of [samePiece, samePart, sameNumber])
		for (const entry of after) {
			if (found.has(entry)) continue;
			const match = [...left].find((candidate) => same(candidate, entry));
			if (!match) continue;
			found.set(entry, match);
			left.delete(match);
		}
	for (const entry of after.filter((candidate) => !found.has(candidate))) {
		const old = [...left].filter(({ part }) => part.kind === entry.part.kind);
		const rivals = after.filter(({ part }) => part.kind === entry.part.kind);
		const open = rivals.filter((rival) => !found.has(rival));
		if (old.length !== 1 || open.length !== 1 || entry.part.kind === 'other') continue;
		found.set(entry, old[0]);
		left.delete(old[0]);
	}
	return [
		...after.map((entry): BillPair => {
			const was = found.get(entry);
			return was ? [was, entry] : [null, entry];
		}),
		...[...left].map((entry): BillPair => [entry, null])
	];
}

function samePiece(a: BillEntry, b: BillEntry): boolean {
	return a.serial !== '' && sameText(a.serial, b.serial) && sameNumber(a, b);
}

function samePart(a: BillEntry, b: BillEntry): boolean {
	return (
		sameNumber(a, b) && sameText(a.part.revision, b.part.revision) && sameText(a.part.batch, b.part.batch)
	);
}

function sameNumber(a: BillEntry, b: BillEntry): boolean {
	return sameText(a.part.number, b.part.number);
}
