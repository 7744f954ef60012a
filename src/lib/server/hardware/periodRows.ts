import type { FittedPeriod } from '$lib/hardware/buildOfRide';
import type { Ledger } from '../ledger/openLedger';
import { refuseStale } from '../ledger/refuseStale';
import { trailVersion } from '../ledger/trailVersion';
import { LedgerRefusal } from '../refusal';
import { inWorkshopZone } from '../settings/inWorkshopZone';

const COLUMNS = 'id, wheel_id AS wheelId, build_id AS buildId, from_ms AS fromMs, until_ms AS untilMs';

/** All fitted periods that stand, those of one wheel together, in order of time. */
export function listPeriods(ledger: Ledger): FittedPeriod[] {
	return ledger.database
		.prepare<[], FittedPeriod>(
			`SELECT ${COLUMNS} FROM fitted_period WHERE withdrawn_ms IS NULL ORDER BY wheel_id, from_ms`
		)
		.all();
}

/** @throws LedgerRefusal not-found, also when it was withdrawn */
export function findPeriod(ledger: Ledger, periodId: number): FittedPeriod {
	const period = ledger.database
		.prepare<[number], FittedPeriod>(
			`SELECT ${COLUMNS} FROM fitted_period WHERE id = ? AND withdrawn_ms IS NULL`
		)
		.get(periodId);
	if (!period) throw new LedgerRefusal('not-found', 'There is no such fitted period.');
	return period;
}

/** The period on this wheel that has not ended and began before an instant; null when there is none. */
export function openPeriod(ledger: Ledger, wheelId: number, beforeMs: number): FittedPeriod | null {
	const open = ledger.database
		.prepare<[number, number], FittedPeriod>(
			`SELECT ${COLUMNS} FROM fitted_period WHERE wheel_id = ? AND until_ms IS NULL AND from_ms < ?
				AND withdrawn_ms IS NULL`
		)
		.get(wheelId, beforeMs);
	return open ?? null;
}

/** The period on this wheel that ended at an instant: its build came off when the next one was fitted. */
export function periodThatEnded(ledger: Ledger, wheelId: number, atMs: number): FittedPeriod | null {
	const ended = ledger.database
		.prepare<[number, number], FittedPeriod>(
			`SELECT ${COLUMNS} FROM fitted_period WHERE wheel_id = ? AND until_ms = ?
				AND withdrawn_ms IS NULL`
		)
		.get(wheelId, atMs);
	return ended ?? null;
}

/** Writes other instants into a period. Belongs in the caller's transaction, after its checks. */
export function movePeriod(
	ledger: Ledger,
	periodId: number,
	instants: { fromMs: number; untilMs: number | null }
): void {
	ledger.database
		.prepare('UPDATE fitted_period SET from_ms = @fromMs, until_ms = @untilMs WHERE id = @periodId')
		.run({ ...instants, periodId });
}

/**
 * A wheel carries one build at a time.
 *
 * @param exceptIds periods that are about to change themselves
 * @throws LedgerRefusal overlap, naming the build that stands in the way
 */
export function refuseOverlap(
	ledger: Ledger,
	wheel: { id: number; name: string },
	wanted: { fromMs: number; untilMs: number | null },
	exceptIds: readonly number[] = []
): void {
	const other = ledger.database
		.prepare<[object], { name: string; fromMs: number; untilMs: number | null }>(
			`SELECT b.name, p.from_ms AS fromMs, p.until_ms AS untilMs
			FROM fitted_period p JOIN build b ON b.id = p.build_id
			WHERE p.wheel_id = @wheelId AND p.withdrawn_ms IS NULL AND p.from_ms < @untilMs
				AND coalesce(p.until_ms, 9e15) > @fromMs AND p.id NOT IN (SELECT value FROM json_each(@exceptIds)) ORDER BY p.from_ms`
		)
		.get({
			wheelId: wheel.id,
			fromMs: wanted.fromMs,
			untilMs: wanted.untilMs ?? 9e15,
			exceptIds: JSON.stringify(exceptIds)
		});
	if (!other) return;
	const until = other.untilMs === null ? 'and still is' : `until ${inWorkshopZone(ledger, other.untilMs)}`;
	const endsBefore = wanted.untilMs === null && other.fromMs > wanted.fromMs;
	throw new LedgerRefusal(
		'overlap',
		`On ${wheel.name} the build "${other.name}" was fitted from ${inWorkshopZone(ledger, other.fromMs)} ${until}; a wheel carries one build at a time${endsBefore ? ', so say until when this one was on it' : ''}.`
	);
}

/**
 * Of two people who mend the same period the second is told.
 *
 * @throws LedgerRefusal conflict
 */
export function refuseUnseen(ledger: Ledger, periodId: number, seenVersion: number | undefined): void {
	if (seenVersion === undefined) return;
	const found = trailVersion(ledger, 'fitted period', periodId);
	refuseStale(ledger, 'fitted period', periodId, found, seenVersion);
}

/**
 * Nothing happened to a wheel before it existed.
 *
 * @throws LedgerRefusal wrong-value; never while its first day is not written down
 */
export function refuseBeforeWheel(
	ledger: Ledger,
	wheel: { name: string; existsFromMs: number | null },
	ms: number
): void {
	if (wheel.existsFromMs === null || ms >= wheel.existsFromMs) return;
	throw new LedgerRefusal(
		'wrong-value',
		`${wheel.name} exists from ${inWorkshopZone(ledger, wheel.existsFromMs)} on; ${inWorkshopZone(ledger, ms)} is before that. Correct one of the two.`
	);
}

/**
 * What has not happened yet cannot be written down, and a mistyped year would stand in the way of all that
 * comes before it.
 *
 * @throws LedgerRefusal wrong-value
 */
export function refuseFuture(ledger: Ledger, ms: number | null): void {
	const now = ledger.now();
	if (ms === null || ms <= now) return;
	throw new LedgerRefusal(
		'wrong-value',
		`${inWorkshopZone(ledger, ms)} has not come yet: it is ${inWorkshopZone(ledger, now)} now. Check the year and the zone.`
	);
}

/** @throws LedgerRefusal wrong-value when it would come off before it was fitted */
export function refuseWrongOrder(
	ledger: Ledger,
	fromMs: number,
	untilMs: number | null,
	rule = 'A build must come off later than it was fitted'
): void {
	if (untilMs === null || untilMs > fromMs) return;
	throw new LedgerRefusal('wrong-value', `${rule}, which was on ${inWorkshopZone(ledger, fromMs)}.`);
}
