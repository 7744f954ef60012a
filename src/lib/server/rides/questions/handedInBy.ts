import type { Ledger } from '../../ledger/openLedger';
import type { RideFacts } from '../rideFacts';
import type { Offer } from './offers';

interface HandedIn {
	rideId: number;
	actorId: number;
	code: string;
}

/**
 * Offers whoever handed the file in as its rider, unless that person is known to hand in the rides of
 * others as well.
 */
export function handedInBy(ledger: Ledger): (ride: RideFacts) => Offer | null {
	const rows = ledger.database
		.prepare<[], HandedIn>(
			`SELECT i.ride_id AS rideId, i.actor_id AS actorId, p.code FROM import i
			JOIN person p ON p.id = i.actor_id WHERE i.stage = 'done' AND i.example = 0`
		)
		.all();
	const byRide = new Map(rows.map((row) => [row.rideId, row]));
	const forOthers = new Set(
		ledger.database
			.prepare<[], { actorId: number }>(
				`SELECT DISTINCT i.actor_id AS actorId FROM import i JOIN ride r ON r.id = i.ride_id
				WHERE i.stage = 'done' AND r.rider_id <> i.actor_id`
			)
			.all()
			.map(({ actorId }) => actorId)
	);
	return (ride) => {
		const row = byRide.get(ride.id);
		if (!row || forOthers.has(row.actorId)) return null;
		return { value: String(row.actorId), sure: true, reason: `${row.code} handed the file in` };
	};
}
