import type { Ledger } from '../../ledger/openLedger';
import type { RideFacts } from '../rideFacts';

interface OnBike {
	wheelId: number;
	wheel: string;
	bikeId: number;
	bike: string;
	fromMs: number;
	untilMs: number | null;
}

/** What was on what when a ride began, as far as it is written down. */
export interface WheelsOnBikes {
	/** the bike that the ride's wheel was on */
	bikeUnder(ride: RideFacts): { id: number; name: string } | null;
	/** the wheel that was on the ride's bike */
	wheelOn(ride: RideFacts): { id: number; name: string } | null;
}

/** Reads once which wheel was on which bike and when. */
export function wheelsOnBikes(ledger: Ledger): WheelsOnBikes {
	const rows = ledger.database
		.prepare<[], OnBike>(
			`SELECT o.wheel_id AS wheelId, w.name AS wheel, o.bike_id AS bikeId, b.name AS bike,
				o.from_ms AS fromMs, o.until_ms AS untilMs
			FROM wheel_on_bike o JOIN wheel w ON w.id = o.wheel_id JOIN bike b ON b.id = o.bike_id
			WHERE o.withdrawn_ms IS NULL`
		)
		.all();
	const during = (atMs: number) => (row: OnBike) =>
		row.fromMs <= atMs && (row.untilMs === null || atMs < row.untilMs);
	return {
		bikeUnder({ wheelId, startMs }) {
			const row = rows.filter((on) => on.wheelId === wheelId).find(during(startMs));
			return row ? { id: row.bikeId, name: row.bike } : null;
		},
		wheelOn({ bikeId, startMs }) {
			const row = rows.filter((on) => on.bikeId === bikeId).find(during(startMs));
			return row ? { id: row.wheelId, name: row.wheel } : null;
		}
	};
}
