import type { Ledger } from './openLedger';

/** more names than any workshop's pages need: what a page's address can name must not fill the memory */
const MOST_NAMES = 200;

interface Remembered {
	/** the evidence that all of it was computed from */
	readonly key: number;
	readonly values: Map<string, unknown>;
}

const remembered = new WeakMap<Ledger, Remembered>();

/** A number that changes with everything that statistics are made of, whichever process changes it. */
export function evidenceKey(ledger: Ledger): number {
	return ledger.database.prepare<[], { changes: number }>('SELECT changes FROM evidence').get()!.changes;
}

/**
 * What was computed before from the same evidence, else computed now. The value is shared: nobody may
 * change it. Within a transaction nothing is kept, since its changes may still be taken back; who opened the ledger for
 * reading alone has nothing to take back.
 *
 * @param name of what is computed; the same name always stands for the same computation
 */
export function remember<Value>(ledger: Ledger, name: string, compute: () => Value): Value {
	if (ledger.database.inTransaction && !ledger.database.readonly) return compute();
	const key = evidenceKey(ledger);
	const known = valuesOf(ledger, key);
	if (known?.has(name)) {
		const value = known.get(name) as Value;
		// what was asked for last is forgotten last
		known.delete(name);
		known.set(name, value);
		return value;
	}
	// a change that comes in between makes the value newer than its key: it is computed once too often
	const value = compute();
	keep(ledger, key, name, value);
	return value;
}

function valuesOf(ledger: Ledger, key: number): Map<string, unknown> | null {
	const known = remembered.get(ledger);
	return known?.key === key ? known.values : null;
}

/** What was computed from older evidence is let go at once: nobody may ask for it any more, and it is large. */
function keep(ledger: Ledger, key: number, name: string, value: unknown): void {
	if ((remembered.get(ledger)?.key ?? -1) > key) return;
	const values = valuesOf(ledger, key) ?? new Map<string, unknown>();
	for (const oldest of values.keys()) {
		if (values.size < MOST_NAMES) break;
		values.delete(oldest);
	}
	values.set(name, value);
	remembered.set(ledger, { key, values });
}
