import type { Ledger } from '../../ledger/openLedger';
import type { RideFacts } from '../rideFacts';

type Named = { readonly id: number; readonly name: string };

/** The bike that the ride's wheel was on when the ride began; null when that is not written down. */
export function bikeUnder(ledger: Ledger, ride: RideFacts): Named | null {
	return find(ledger, 'bike', 'wheel', ride.wheelId, ride.startMs);
}

/** The wheel that was on the ride's bike when the ride began; null when that is not written down. */
export function wheelOn(ledger: Ledger, ride: RideFacts): Named | null {
	return find(ledger, 'wheel', 'bike', ride.bikeId, ride.startMs);
}

function find(
	ledger: Ledger,
	wanted: 'bike' | 'wheel',
	given: 'bike' | 'wheel',
	id: number | null,
	atMs: number
): Named | null {
	if (id === null) return null;
	const row = ledger.database
		.prepare<[number, number, number], Named>(
			`SELECT x.id, x.name FROM wheel_on_bike o JOIN ${wanted} x ON x.id = o.${wanted}_id
			WHERE o.${given}_id = ? AND o.withdrawn_ms IS NULL AND o.from_ms <= ?
				AND coalesce(o.until_ms, 9e15) > ?`
		)
		.get(id, atMs, atMs);
	return row ?? null;
}
