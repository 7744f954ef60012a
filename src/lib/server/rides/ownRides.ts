import type { FeltSlipView } from '../marks/feltSlips';
import type { Ledger } from '../ledger/openLedger';
import { toInstant } from '../ledger/instants';
import type { Instant, RiderMarksView, RideView } from '../views';
import { rideView } from './rideView';

/**
 * A ride is a rider's own when the rider is named on it, or handed it in and nobody else is named. The alias of
 * the ride is r.
 */
export const IS_OWN = `(r.rider_id = @personId OR (r.rider_id IS NULL AND EXISTS
	(SELECT 1 FROM import i WHERE i.ride_id = r.id AND i.actor_id = @personId)))`;

/** What a rider sees of a ride: nothing of wheels, builds, other people or the workshop's notes. */
export interface OwnRide {
	id: number;
	startedAt: Instant;
	endedAt: Instant;
	localOffsetMin: number | null;
	fileName: string;
	durationS: number;
	totalM: number;
	observedM: number;
	/** what was found, and on how much of the ride it could have been found */
	summary: string;
	/** it counts nowhere until somebody in the workshop has answered something */
	waits: boolean;
	withdrawn: boolean;
	events: OwnEvent[];
	felt: FeltSlipView[];
	riderMarks: RiderMarksView;
}

export interface OwnEvent {
	id: number;
	startS: number;
	at: Instant;
	kind: string;
	overrunCrankDeg: { value: number; lower: number; upper: number };
	verdict: 'confirmed' | 'rejected' | null;
}

/** One page of a person's own rides, the newest first, and how many there are. */
export function ownRides(
	ledger: Ledger,
	personId: number,
	query: { page: number; pageSize: number }
): { rides: OwnRide[]; total: number } {
	const total = ledger.database
		.prepare<[object], number>(`SELECT count(*) FROM ride r WHERE ${IS_OWN}`)
		.pluck()
		.get({ personId })!;
	const offset = (Math.max(1, Math.trunc(query.page) || 1) - 1) * query.pageSize;
	const ids = ledger.database
		.prepare<[object], number>(
			`SELECT r.id FROM ride r WHERE ${IS_OWN} ORDER BY r.started_ms DESC, r.id DESC LIMIT @limit OFFSET @offset`
		)
		.pluck()
		.all({ personId, limit: query.pageSize, offset });
	return { rides: ids.flatMap((id) => toOwn(ledger, id) ?? []), total };
}

/** One of a person's own rides; null when it is somebody else's or does not exist. */
export function ownRide(ledger: Ledger, personId: number, rideId: number): OwnRide | null {
	return ownsRide(ledger, personId, rideId) ? toOwn(ledger, rideId) : null;
}

export function ownsRide(ledger: Ledger, personId: number, rideId: number): boolean {
	if (!Number.isSafeInteger(rideId)) return false;
	const row = ledger.database
		.prepare(`SELECT 1 FROM ride r WHERE r.id = @rideId AND ${IS_OWN}`)
		.get({ rideId, personId });
	return row !== undefined;
}

function toOwn(ledger: Ledger, rideId: number): OwnRide | null {
	const ride = rideView(ledger, rideId);
	if (!ride) return null;
	const startMs = Date.parse(ride.startedAt);
	return {
		id: ride.id,
		startedAt: ride.startedAt,
		endedAt: toInstant(startMs + ride.durationS * 1000),
		localOffsetMin: ride.localOffsetMin,
		fileName: ride.fileName,
		durationS: ride.durationS,
		totalM: ride.totalM,
		observedM: ride.observedM,
		summary: ride.summary,
		waits: ride.state === 'needs an answer',
		withdrawn: ride.state === 'withdrawn',
		events: ride.eventList.map(toOwnEvent),
		felt: ride.felt,
		riderMarks: ride.riderMarks
	};
}

function toOwnEvent({
	id,
	startS,
	startedAt,
	kind,
	overrunCrankDeg,
	verdict
}: RideView['eventList'][number]) {
	return { id, startS, at: startedAt, kind, overrunCrankDeg, verdict: verdict?.verdict ?? null };
}
