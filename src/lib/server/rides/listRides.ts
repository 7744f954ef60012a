import type { Ledger } from '../ledger/openLedger';
import { openMarks } from '../marks/openMarks';
import { eventTallies } from '../rates/eventTallies';
import type { RideRow } from '../views';
import { rideBriefs, type RideBrief } from './rideBriefs';
import { allRideFacts, type RideFacts } from './rideFacts';
import { rideRows } from './rideRow';

export interface RideQuery {
	/** from 1; the first when not given */
	page?: number;
	pageSize: number;
	buildId?: number;
	wheelId?: number;
	/** only rides that a person must still answer something about */
	onlyNeeds?: boolean;
	/** only rides that count nowhere until a person has answered */
	onlyHeldBack?: boolean;
	/** only rides with events that nobody has reviewed */
	onlyUnreviewed?: boolean;
	/** instead of a page: rides older than this one, so that the list stands still while rides come in */
	olderThan?: RideKey | null;
}

/** Where a ride stands in the list: by its start, then by its number. */
export interface RideKey {
	startMs: number;
	id: number;
}

/**
 * One page of rides, the newest first, how many there are in all, and after which one the next page begins (null =
 * there is none).
 */
export function listRides(
	ledger: Ledger,
	query: RideQuery
): { rows: RideRow[]; total: number; next: RideKey | null } {
	const tallies = query.onlyUnreviewed ? eventTallies(ledger) : null;
	const open = openMarks(ledger);
	const isWanted = (ride: RideBrief) =>
		(query.buildId === undefined || ride.buildIds.includes(query.buildId)) &&
		(query.wheelId === undefined || ride.wheelId === query.wheelId) &&
		(!query.onlyNeeds || ride.needs || open.has(ride.id)) &&
		(!query.onlyHeldBack || ride.needs) &&
		(!tallies || (tallies.get(ride.id)?.withoutVerdict ?? 0) > 0);
	const briefs = rideBriefs(ledger);
	const rides = allRideFacts(ledger);
	const wanted: RideFacts[] = [];
	for (let place = briefs.length - 1; place >= 0; place--)
		if (isWanted(briefs[place])) wanted.push(rides[place]);
	const pageSize = Math.max(1, Math.min(500, Math.trunc(query.pageSize) || 1));
	const key = query.olderThan;
	const reached = key ? wanted.findIndex((ride) => isOlder(ride, key)) : 0;
	const from = key
		? reached < 0
			? wanted.length
			: reached
		: (Math.max(1, Math.trunc(query.page ?? 1) || 1) - 1) * pageSize;
	const shown = wanted.slice(from, from + pageSize);
	const last = from + pageSize < wanted.length ? shown[shown.length - 1] : null;
	return {
		rows: rideRows(ledger, shown),
		total: wanted.length,
		next: last ? { startMs: last.startMs, id: last.id } : null
	};
}

function isOlder(ride: RideKey, { startMs, id }: RideKey): boolean {
	return ride.startMs < startMs || (ride.startMs === startMs && ride.id < id);
}
