import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import type { Instant } from '../views';

/** An event that two people saw differently; it counts as not reviewed until a person decides with both in view. */
export interface Dispute {
	readonly eventId: number;
	readonly rideId: number;
	readonly startedAt: Instant;
	readonly startS: number;
	readonly crankDeg: number;
	readonly first: { readonly by: string; readonly verdict: string; readonly reason: string | null };
	readonly second: { readonly by: string; readonly verdict: string; readonly reason: string | null };
}

interface Row extends Omit<Dispute, 'startedAt' | 'first' | 'second'> {
	startedMs: number;
	firstBy: string;
	firstVerdict: string;
	firstReason: string | null;
	secondBy: string;
	secondVerdict: string;
	secondReason: string | null;
}

/** @param rideId only those of one ride; all when not given */
export function disputes(ledger: Ledger, rideId?: number): Dispute[] {
	return ledger.database
		.prepare<[object], Row>(
			`SELECT e.id AS eventId, e.ride_id AS rideId, r.started_ms AS startedMs, e.start_s AS startS,
				e.overrun_crank_deg AS crankDeg, fp.code AS firstBy, v.verdict AS firstVerdict, v.reason AS firstReason,
				sp.code AS secondBy, i.answer AS secondVerdict, i.reason AS secondReason
			FROM review_item i JOIN slip_event e ON e.id = i.event_id AND e.version = @version AND e.verdict_id IS NULL
			JOIN ride r ON r.id = e.ride_id AND r.withdrawn_ms IS NULL
			JOIN verdict v ON v.id = i.verdict_id JOIN person fp ON fp.id = v.actor_id
			JOIN person sp ON sp.id = i.reviewer_id
			WHERE i.disagrees = 1 AND (@rideId IS NULL OR e.ride_id = @rideId)
				-- a verdict that was given after the disagreement, and taken back, ends it as well
				AND NOT EXISTS (SELECT 1 FROM verdict later WHERE later.ride_id = e.ride_id AND later.at_ms > i.answered_ms
					AND later.start_ms = v.start_ms)
			ORDER BY r.started_ms, e.start_s`
		)
		.all({ version: currentVersion(ledger), rideId: rideId ?? null })
		.map(
			({ startedMs, firstBy, firstVerdict, firstReason, secondBy, secondVerdict, secondReason, ...row }) => ({
				...row,
				startedAt: toInstant(startedMs),
				first: { by: firstBy, verdict: firstVerdict, reason: firstReason },
				second: { by: secondBy, verdict: secondVerdict, reason: secondReason }
			})
		);
}
