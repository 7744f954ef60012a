import type { AxisPiece } from '$lib/hardware/wheelAxis';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { IN_THE_RATE } from '../rates/eventTallies';
import type { WheelPiece } from './distances';

/** A slip of the rate on the distance axis of its wheel; rejected ones are not on it. */
export interface SlipOnAxis {
	eventId: number;
	rideId: number;
	atM: number;
	confirmed: boolean;
}

/** The slips that rates count, where they lie on the axis of the wheel. */
export function slipsOnAxis(ledger: Ledger, axis: readonly AxisPiece<WheelPiece>[]): SlipOnAxis[] {
	const version = currentVersion(ledger);
	const ofRide = ledger.database.prepare<
		[number, number, number, number],
		{ eventId: number; atM: number; confirmed: number }
	>(
		`SELECT e.id AS eventId, e.at_m AS atM, v.verdict IS 'confirmed' AS confirmed
		FROM slip_event e LEFT JOIN verdict v ON v.id = e.verdict_id
		WHERE e.ride_id = ? AND e.version = ? AND e.start_s >= ? AND e.start_s < ?
			AND ${IN_THE_RATE} AND v.verdict IS NOT 'rejected' ORDER BY e.start_s, e.id`
	);
	return axis.flatMap(({ part, fromM, toM }): SlipOnAxis[] =>
		part === null || part.standing.state !== 'counted'
			? []
			: ofRide.all(part.id, version, part.fromS, part.toS).map(({ eventId, atM, confirmed }) => ({
					eventId,
					rideId: part.id,
					atM: Math.min(toM, fromM + Math.max(0, atM - part.fromM)),
					confirmed: confirmed === 1
				}))
	);
}
