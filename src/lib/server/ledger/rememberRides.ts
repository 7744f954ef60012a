import type { Ledger } from './openLedger';

/** with more rides than these everything is as quickly read anew */
const MANY = 200;

/** How something that consists of rides is read. */
export interface ReadOfRides<Value> {
	all(): Value;
	/** from what was known before, with these rides read again; some of them may be new and some gone */
	anew(before: Value, rideIds: readonly number[]): Value;
}

interface Known {
	readonly changes: number;
	/** changes that are not about one ride alone */
	readonly elsewhere: number;
	readonly value: unknown;
}

const known = new WeakMap<Ledger, Map<string, Known>>();

/**
 * As `remember`, for what is put together from single rides: after a change that was about some rides alone only those
 * are read again. In a full ledger that is the difference between a quarter of a second and some milliseconds for each
 * file that comes in. The value is shared: nobody may change it, `anew` gives another one.
 *
 * @param name always stands for the same reading
 */
export function rememberRides<Value>(ledger: Ledger, name: string, read: ReadOfRides<Value>): Value {
	const { database } = ledger;
	// what a transaction changed may still be taken back; who only reads changes nothing
	if (database.inTransaction && !database.readonly) return read.all();
	const { changes, elsewhere } = countsOf(ledger);
	const before = known.get(ledger)?.get(name);
	if (before?.changes === changes) return before.value as Value;
	const touched = before?.elsewhere === elsewhere ? ridesSince(ledger, before.changes) : null;
	const value = before && touched ? read.anew(before.value as Value, touched) : read.all();
	if (!known.has(ledger)) known.set(ledger, new Map());
	known.get(ledger)!.set(name, { changes, elsewhere, value });
	return value;
}

function countsOf(ledger: Ledger): { changes: number; elsewhere: number } {
	return ledger.database
		.prepare<[], { changes: number; elsewhere: number }>(
			'SELECT changes, changes - of_rides AS elsewhere FROM evidence'
		)
		.get()!;
}

/** Rides that changed since the count stood there; null = too many. One that changed just then may be among them. */
function ridesSince(ledger: Ledger, changes: number): number[] | null {
	const rows = ledger.database
		.prepare<[number], { id: number }>(
			`SELECT ride_id AS id FROM evidence_ride WHERE changed_at >= ? LIMIT ${MANY + 1}`
		)
		.all(changes);
	return rows.length > MANY ? null : rows.map(({ id }) => id);
}
