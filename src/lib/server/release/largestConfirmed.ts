import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';

/**
 * The largest confirmed slip of these rides, crank degrees; 0 = none. Also where nothing was observed: what a person
 * confirmed has happened.
 *
 * @param rejected "slips" = as if every rejected event were one
 */
export function largestConfirmed(
	ledger: Ledger,
	rideIds: readonly number[],
	rejected: 'none' | 'slips' = 'none'
): number {
	const row = ledger.database
		.prepare<[object], { largest: number | null }>(
			`SELECT max(e.overrun_crank_deg) AS largest FROM slip_event e JOIN verdict v ON v.id = e.verdict_id
			WHERE e.version = @version AND (v.verdict = 'confirmed' OR @rejected = 'slips')
				AND e.ride_id IN (SELECT value FROM json_each(@rideIds))`
		)
		.get({ version: currentVersion(ledger), rideIds: JSON.stringify(rideIds), rejected });
	return row?.largest ?? 0;
}
