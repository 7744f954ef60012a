import type { AxisPiece } from '$lib/hardware/wheelAxis';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { byRide } from '../rides/byRide';
import { IN_THE_RATE } from '../rates/eventTallies';
import type { WheelPiece } from './distances';

/** A slip of the rate on the distance axis of its wheel; rejected ones are not on it. */
export interface SlipOnAxis {
	eventId: number;
	rideId: number;
	atM: number;
	confirmed: boolean;
}

interface StoredSlip {
	eventId: number;
	rideId: number;
	startS: number;
	atM: number;
	confirmed: number;
}

/** The slips that rates count, where they lie on the axis of the wheel. */
export function slipsOnAxis(ledger: Ledger, axis: readonly AxisPiece<WheelPiece>[]): SlipOnAxis[] {
	const counted = axis.flatMap(({ part, fromM, toM }) =>
		part?.standing.state === 'counted' ? [{ part, fromM, toM }] : []
	);
	const ofRides = readSlips(
		ledger,
		counted.map(({ part }) => part.id)
	);
	return counted.flatMap(({ part, fromM, toM }) =>
		(ofRides.get(part.id) ?? [])
			.filter(({ startS }) => startS >= part.fromS && startS < part.toS)
			.map(({ eventId, rideId, atM, confirmed }) => ({
				eventId,
				rideId,
				atM: Math.min(toM, fromM + Math.max(0, atM - part.fromM)),
				confirmed: confirmed === 1
			}))
	);
}

/** One question for all rides: one a ride took most of a second on a wheel with 3000 of them. */
function readSlips(ledger: Ledger, rideIds: readonly number[]): Map<number, StoredSlip[]> {
	const rows = ledger.database
		.prepare<[object], StoredSlip>(
			`SELECT e.id AS eventId, e.ride_id AS rideId, e.start_s AS startS, e.at_m AS atM,
				v.verdict IS 'confirmed' AS confirmed
			FROM slip_event e LEFT JOIN verdict v ON v.id = e.verdict_id
			WHERE e.version = @version AND e.ride_id IN (SELECT value FROM json_each(@rideIds))
				AND ${IN_THE_RATE} AND v.verdict IS NOT 'rejected' ORDER BY e.ride_id, e.start_s, e.id`
		)
		.all({ version: currentVersion(ledger), rideIds: JSON.stringify(rideIds) });
	return byRide(rows);
}
