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
	const tallies = eventTallies(ledger);
	const open = openMarks(ledger);
	const isWanted = (ride: RideBrief) =>
		(query.wheelId === undefined || ride.wheelId === query.wheelId) &&
		(!query.onlyNeeds || ride.needs || open.has(ride.id)) &&
		(!query.onlyUnreviewed || (tallies.get(ride.id)?.withoutVerdict ?? 0) > 0);
	const briefs = rideBriefs(ledger);
	const places = query.buildId === undefined ? null : placesOfBuild(briefs, query.buildId);
	const rides = allRideFacts(ledger);
	const pageSize = Math.max(1, Math.min(500, Math.trunc(query.pageSize) || 1));
	const key = query.olderThan;
	const from = key ? 0 : (Math.max(1, Math.trunc(query.page ?? 1) || 1) - 1) * pageSize;
	const shown: RideFacts[] = [];
	let total = 0;
	/** wanted rides at or behind the place where the page begins */
	let behind = 0;
	for (let at = (places ?? briefs).length - 1; at >= 0; at--) {
		const place = places ? places[at] : at;
		if (!isWanted(briefs[place])) continue;
		total++;
		if (key && behind === 0 && !isOlder(rides[place], key)) continue;
		if (behind >= from && shown.length < pageSize) shown.push(rides[place]);
		behind++;
	}
	const last = from + pageSize < behind ? shown[shown.length - 1] : null;
	return {
		rows: rideRows(ledger, shown, tallies),
		total,
		next: last ? { startMs: last.startMs, id: last.id } : null
	};
}

/** of a list of rides, until there is another one: where the rides of each build stand that was asked for */
const ofBuilds = new WeakMap<readonly RideBrief[], Map<number, readonly number[]>>();

/** A page about a build asks for its rides more than once. */
function placesOfBuild(briefs: readonly RideBrief[], buildId: number): readonly number[] {
	let known = ofBuilds.get(briefs);
	if (!known) ofBuilds.set(briefs, (known = new Map()));
	const before = known.get(buildId);
	if (before) return before;
	const places: number[] = [];
	for (let place = 0; place < briefs.length; place++)
		if (briefs[place].buildIds.includes(buildId)) places.push(place);
	// anybody may ask for builds that there are not
	if (places.length > 0) known.set(buildId, places);
	return places;
}

/** How many rides count nowhere until a person has answered. */
export function countHeldBack(ledger: Ledger): number {
	let rides = 0;
	for (const { needs } of rideBriefs(ledger)) if (needs) rides++;
	return rides;
}

function isOlder(ride: RideKey, { startMs, id }: RideKey): boolean {
	return ride.startMs < startMs || (ride.startMs === startMs && ride.id < id);
}
