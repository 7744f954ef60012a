import { REFERENCE_SLIP_CRANK_DEG } from '$lib/slip/analysis';
import { hubTorqueBin } from '$lib/slip/hubTorqueBins';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { byRide, type OfRide } from '../rides/byRide';
import { torqueGroupOf } from './strata';

/** Slips of one size and torque that were put into the observed stretches of a ride, and how many were found. */
export interface FoundTally {
	readonly sizeCrankDeg: number;
	/** as strata file it; -1 = not known */
	readonly torqueGroup: number;
	readonly put: number;
	readonly found: number;
}

/**
 * What became of slips of the reference size and more that were put into these rides on observed stretches, by the
 * current version of the analysis; rides into which none was put are not in the map.
 */
export function foundTallies(
	ledger: Ledger,
	rideIds: readonly number[]
): ReadonlyMap<number, readonly FoundTally[]> {
	const rows = ledger.database
		.prepare<[object], OfRide & Omit<FoundTally, 'torqueGroup'> & { torqueFromNm: number | null }>(
			`SELECT ride_id AS rideId, size_crank_deg AS sizeCrankDeg, torque_from_nm AS torqueFromNm,
				sum(put) AS put, sum(found) AS found
			FROM insertion_tally WHERE version = @version AND observed = 1 AND size_crank_deg >= @least
				AND ride_id IN (SELECT value FROM json_each(@rideIds))
			GROUP BY ride_id, size_crank_deg, torque_from_nm`
		)
		.all({
			version: currentVersion(ledger),
			least: REFERENCE_SLIP_CRANK_DEG,
			rideIds: JSON.stringify(rideIds)
		})
		.map(({ torqueFromNm, ...row }) => ({
			...row,
			torqueGroup: torqueGroupOf(hubTorqueBin(torqueFromNm ?? NaN))
		}));
	return byRide(rows);
}
