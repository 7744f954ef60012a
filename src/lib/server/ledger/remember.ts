import type { Ledger } from './openLedger';

/** more names than any workshop's pages need: what a page's address can name must not fill the memory */
const MOST_NAMES = 200;

const remembered = new WeakMap<Ledger, Map<string, { key: number; value: unknown }>>();

/** A number that changes with everything that statistics are made of, whichever process changes it. */
export function evidenceKey(ledger: Ledger): number {
	return ledger.database.prepare<[], { changes: number }>('SELECT changes FROM evidence').get()!.changes;
}

/**
 * What was computed before from the same evidence, else computed now. The value is shared: nobody may
 * change it. Within a transaction nothing is kept, since its changes may still be taken back.
 *
 * @param name of what is computed; the same name always stands for the same computation
 */
export function remember<Value>(ledger: Ledger, name: string, compute: () => Value): Value {
	if (ledger.database.inTransaction) return compute();
	const key = evidenceKey(ledger);
	const known = remembered.get(ledger)?.get(name);
	if (known?.key === key) {
		// what was asked for last is forgotten last
		remembered.get(ledger)!.delete(name);
		remembered.get(ledger)!.set(name, known);
		return known.value as Value;
	}
	// a change that comes in between makes the value newer than its key: it is computed once too often
	const value = compute();
	if (!remembered.has(ledger)) remembered.set(ledger, new Map());
	const names = remembered.get(ledger)!;
	names.delete(name);
	for (const oldest of names.keys()) {
		if (names.size < MOST_NAMES) break;
		names.delete(oldest);
	}
	names.set(name, { key, value });
	return value;
}

/** Whether `remember` would answer at once: the name was computed from the evidence as it is now. */
export function isRemembered(ledger: Ledger, name: string): boolean {
	return remembered.get(ledger)?.get(name)?.key === evidenceKey(ledger);
}
