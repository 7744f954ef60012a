import type { Ledger } from '../ledger/openLedger';
import { openMarks } from '../marks/openMarks';
import type { RideRow } from '../views';
import { allRideFacts } from './rideFacts';
import { rideRows } from './rideRow';
import { tellsOfBuild } from './tellsOfBuild';

export interface RideQuery {
	/** from 1 */
	page: number;
	pageSize: number;
	buildId?: number;
	wheelId?: number;
	/** only rides that a person must still answer something about */
	onlyNeeds?: boolean;
	/** only rides that count nowhere until a person has answered */
	onlyHeldBack?: boolean;
}

/** One page of rides, the newest first, and how many there are in all. */
export function listRides(ledger: Ledger, query: RideQuery): { rows: RideRow[]; total: number } {
	const open = openMarks(ledger);
	const wanted = allRideFacts(ledger)
		.filter(
			(ride) =>
				(query.buildId === undefined || tellsOfBuild(ride, query.buildId)) &&
				(query.wheelId === undefined || ride.wheelId === query.wheelId) &&
				(!query.onlyNeeds || ride.standing.needs.length > 0 || open.has(ride.id)) &&
				(!query.onlyHeldBack || ride.standing.needs.length > 0)
		)
		.reverse();
	const pageSize = Math.max(1, Math.min(500, Math.trunc(query.pageSize) || 1));
	const from = (Math.max(1, Math.trunc(query.page) || 1) - 1) * pageSize;
	return { rows: rideRows(ledger, wanted.slice(from, from + pageSize)), total: wanted.length };
}
