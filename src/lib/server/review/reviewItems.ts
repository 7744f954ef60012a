import { randomBytes } from 'node:crypto';
import { seededChance } from '$lib/slip/seededChance';
import type { Actor } from '../actor';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { readSetting } from '../settings/storedSetting';
import { waitingEvents, type WaitingEvent } from './waitingEvents';

export type ReviewPurpose = 'first look' | 'second look' | 'put in' | 'known good';
export type ReviewAnswer = 'confirmed' | 'rejected' | 'skipped';

/** What lies before a reviewer, or did. */
export interface ReviewItem {
	readonly id: number;
	readonly token: string;
	readonly reviewerId: number;
	readonly purpose: ReviewPurpose;
	readonly rideId: number;
	readonly version: number;
	/** null = a slip that was put in: then `probe` names it */
	readonly eventId: number | null;
	readonly probe: number | null;
	readonly putCrankDeg: number | null;
	readonly answer: ReviewAnswer | null;
	readonly reason: string | null;
	readonly verdictId: number | null;
	readonly disagrees: 0 | 1;
}

export const ITEM_COLUMNS = `id, token, reviewer_id AS reviewerId, purpose, ride_id AS rideId, version,
	event_id AS eventId, probe, put_crank_deg AS putCrankDeg, answer, reason, verdict_id AS verdictId, disagrees`;

/** One in so many is there to measure the review (common practice, no source). */
const ONE_PROBE_IN = 8;

/** How many of the things laid before a reviewer are there to measure the review: one in this many. */
export function oneProbeIn(ledger: Ledger): number {
	const stored = Number(readSetting(ledger, 'oneProbeIn') ?? ONE_PROBE_IN);
	return Number.isInteger(stored) && stored >= 2 ? stored : ONE_PROBE_IN;
}

/**
 * What lies before a reviewer now; when nothing does, the next is laid there. Which it is depends on the reviewer
 * and the ledger alone, in an order that mixes rides; between events come slips that were put in and events of
 * wheels that are known to be good, and nothing on the page tells them apart.
 *
 * @returns null when nothing is left to decide
 */
export function openReviewItem(ledger: Ledger, { personId }: Actor): ReviewItem | null {
	return ledger.database
		.transaction(() => {
			dropStaleItems(ledger, personId);
			return lyingBefore(ledger, personId) ?? layNext(ledger, personId);
		})
		.immediate();
}

/** Finds an item by the token that a page named; null when it is no item of this reviewer. */
export function findReviewItem(ledger: Ledger, { personId }: Actor, token: string): ReviewItem | null {
	return (
		ledger.database
			.prepare<[string, number], ReviewItem>(
				`SELECT ${ITEM_COLUMNS} FROM review_item WHERE token = ? AND reviewer_id = ?`
			)
			.get(token, personId) ?? null
	);
}

function lyingBefore(ledger: Ledger, personId: number): ReviewItem | null {
	return (
		ledger.database
			.prepare<[number], ReviewItem>(
				`SELECT ${ITEM_COLUMNS} FROM review_item WHERE reviewer_id = ? AND answer IS NULL
				ORDER BY opened_ms DESC, id DESC LIMIT 1`
			)
			.get(personId) ?? null
	);
}

/** What was not answered and is not there any more, or was decided elsewhere, is laid aside without a trace. */
function dropStaleItems(ledger: Ledger, personId: number): void {
	ledger.database
		.prepare(
			`DELETE FROM review_item WHERE reviewer_id = @personId AND answer IS NULL AND (
				version <> @version
				OR (purpose = 'put in' AND NOT EXISTS (SELECT 1 FROM review_probe p WHERE p.ride_id = review_item.ride_id
					AND p.version = review_item.version AND p.probe = review_item.probe))
				OR (purpose <> 'put in' AND NOT EXISTS (SELECT 1 FROM slip_event e WHERE e.id = event_id))
				OR (purpose = 'first look' AND EXISTS (SELECT 1 FROM slip_event e WHERE e.id = event_id AND e.verdict_id IS NOT NULL))
				OR (purpose = 'second look' AND EXISTS (SELECT 1 FROM slip_event e WHERE e.id = event_id AND e.verdict_id IS NULL)))`
		)
		.run({ personId, version: currentVersion(ledger) });
}

function layNext(ledger: Ledger, personId: number): ReviewItem | null {
	const before = ledger.database
		.prepare<[number], number>('SELECT count(*) FROM review_item WHERE reviewer_id = ?')
		.pluck()
		.get(personId)!;
	const probeIsDue = seededChance(personId * 7919 + before).next() < 1 / oneProbeIn(ledger);
	const waiting = waitingEvents(ledger, personId);
	const next =
		(probeIsDue && waiting.length > 0 ? nextProbe(ledger, personId, before) : null) ??
		inMixedOrder(waiting, personId)[0];
	if (!next) return null;
	const { lastInsertRowid } = ledger.database
		.prepare(
			`INSERT INTO review_item (token, reviewer_id, purpose, ride_id, version, event_id, probe, put_crank_deg,
				opened_ms) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)`
		)
		.run(
			randomBytes(12).toString('hex'),
			personId,
			next.purpose,
			next.rideId,
			currentVersion(ledger),
			next.eventId,
			'probe' in next ? next.probe : null,
			'putCrankDeg' in next ? next.putCrankDeg : null,
			ledger.now()
		);
	return ledger.database
		.prepare<[number | bigint], ReviewItem>(`SELECT ${ITEM_COLUMNS} FROM review_item WHERE id = ?`)
		.get(lastInsertRowid)!;
}

/** What the rate is about first, what was skipped last; else by a draw that is the same for the same event. */
function inMixedOrder(waiting: readonly WaitingEvent[], personId: number): WaitingEvent[] {
	const drawn = (eventId: number) => seededChance(eventId * 2971 + personId).next();
	return [...waiting].sort(
		(a, b) => a.skippedMs - b.skippedMs || b.inTheRate - a.inTheRate || drawn(a.eventId) - drawn(b.eventId)
	);
}

interface Probe {
	readonly purpose: 'put in' | 'known good';
	readonly rideId: number;
	readonly eventId: number | null;
	readonly probe: number | null;
	readonly putCrankDeg: number | null;
}

/** Slips put in and decided events of good wheels in turn, each shown to a reviewer once. */
function nextProbe(ledger: Ledger, personId: number, before: number): Probe | null {
	const version = currentVersion(ledger);
	const putIn = ledger.database
		.prepare<[object], Probe>(
			`SELECT 'put in' AS purpose, p.ride_id AS rideId, NULL AS eventId, p.probe, p.put_crank_deg AS putCrankDeg
			FROM review_probe p JOIN ride r ON r.id = p.ride_id AND r.withdrawn_ms IS NULL
			WHERE p.version = @version AND NOT EXISTS (SELECT 1 FROM review_item i WHERE i.reviewer_id = @personId
				AND i.purpose = 'put in' AND i.ride_id = p.ride_id AND i.version = p.version AND i.probe = p.probe)`
		)
		.all({ version, personId });
	const knownGood = ledger.database
		.prepare<[object], Probe>(
			`SELECT 'known good' AS purpose, e.ride_id AS rideId, e.id AS eventId, NULL AS probe, NULL AS putCrankDeg
			FROM slip_event e JOIN ride r ON r.id = e.ride_id AND r.withdrawn_ms IS NULL
			JOIN wheel w ON w.id = r.wheel_id AND w.known_good = 1
			WHERE e.version = @version AND e.kind = 'slip' AND e.verdict_id IS NOT NULL
				AND NOT EXISTS (SELECT 1 FROM review_item i WHERE i.reviewer_id = @personId AND i.event_id = e.id)`
		)
		.all({ version, personId });
	const chance = seededChance(personId * 104_729 + before);
	const pick = (from: readonly Probe[]) => from[Math.floor(chance.next() * from.length)] ?? null;
	return chance.chance(0.5) ? (pick(knownGood) ?? pick(putIn)) : (pick(putIn) ?? pick(knownGood));
}
