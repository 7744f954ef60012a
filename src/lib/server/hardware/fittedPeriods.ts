import type { FittedPeriod } from '$lib/hardware/buildOfRide';
import type { Actor } from '../actor';
import { fromInstant, toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { giveRidesTheOnlyWheel } from '../rides/giveRidesTheOnlyWheel';
import { inWorkshopZone } from '../settings/inWorkshopZone';
import { findBuild } from './builds';
import { findWheel } from './wheels';

const COLUMNS = 'id, wheel_id AS wheelId, build_id AS buildId, from_ms AS fromMs, until_ms AS untilMs';

/** All fitted periods, those of one wheel together, in order of time. */
export function listPeriods(ledger: Ledger): FittedPeriod[] {
	return ledger.database
		.prepare<[], FittedPeriod>(`SELECT ${COLUMNS} FROM fitted_period ORDER BY wheel_id, from_ms`)
		.all();
}

/**
 * Fits a build on a wheel from an instant on. The build that was on it comes off at that instant.
 *
 * @returns id of the new period
 * @throws LedgerRefusal not-found; overlap when a period that has begun later or has ended stands in the
 *   way; wrong-value for instants in the wrong order
 */
export function fitBuild(
	ledger: Ledger,
	actor: Actor,
	input: { wheelId: number; buildId: number; from: string; until?: string | null }
): number {
	const fromMs = fromInstant(input.from);
	const untilMs = input.until ? fromInstant(input.until) : null;
	if (untilMs !== null && untilMs <= fromMs)
		throw new LedgerRefusal('wrong-value', 'A build must come off later than it was fitted.');
	return ledger.database
		.transaction((): number => {
			const wheel = findWheel(ledger, input.wheelId);
			const build = findBuild(ledger, input.buildId);
			closeOpenPeriod(ledger, actor, wheel.id, fromMs);
			refuseOverlap(ledger, wheel, { fromMs, untilMs });
			const { lastInsertRowid } = ledger.database
				.prepare(
					'INSERT INTO fitted_period (wheel_id, build_id, from_ms, until_ms, created_ms) VALUES (?, ?, ?, ?, ?)'
				)
				.run(wheel.id, build.id, fromMs, untilMs, ledger.now());
			const periodId = Number(lastInsertRowid);
			leaveTrail(ledger, actor, 'fitted', 'fitted period', periodId, {
				wheelId: wheel.id,
				buildId: build.id,
				from: toInstant(fromMs),
				until: untilMs === null ? null : toInstant(untilMs)
			});
			giveRidesTheOnlyWheel(ledger, actor);
			return periodId;
		})
		.immediate();
}

/**
 * Takes a build off its wheel.
 *
 * @throws LedgerRefusal not-found; conflict when it is off already; wrong-value before it was fitted
 */
export function endFittedPeriod(ledger: Ledger, actor: Actor, periodId: number, until: string): void {
	const untilMs = fromInstant(until);
	ledger.database
		.transaction(() => {
			const period = ledger.database
				.prepare<[number], FittedPeriod>(`SELECT ${COLUMNS} FROM fitted_period WHERE id = ?`)
				.get(periodId);
			if (!period) throw new LedgerRefusal('not-found', 'There is no such fitted period.');
			if (period.untilMs !== null)
				throw new LedgerRefusal(
					'conflict',
					`This build came off on ${inWorkshopZone(ledger, period.untilMs)} already.`
				);
			endPeriod(ledger, actor, period, untilMs);
		})
		.immediate();
}

function closeOpenPeriod(ledger: Ledger, actor: Actor, wheelId: number, atMs: number): void {
	const open = ledger.database
		.prepare<[number, number], FittedPeriod>(
			`SELECT ${COLUMNS} FROM fitted_period WHERE wheel_id = ? AND until_ms IS NULL AND from_ms < ?`
		)
		.get(wheelId, atMs);
	if (open) endPeriod(ledger, actor, open, atMs);
}

function endPeriod(ledger: Ledger, actor: Actor, period: FittedPeriod, untilMs: number): void {
	if (untilMs <= period.fromMs)
		throw new LedgerRefusal(
			'wrong-value',
			`A build must come off later than it was fitted, which was on ${inWorkshopZone(ledger, period.fromMs)}.`
		);
	ledger.database.prepare('UPDATE fitted_period SET until_ms = ? WHERE id = ?').run(untilMs, period.id);
	leaveTrail(ledger, actor, 'took off', 'fitted period', period.id, { until: toInstant(untilMs) });
}

function refuseOverlap(
	ledger: Ledger,
	wheel: { id: number; name: string },
	wanted: { fromMs: number; untilMs: number | null }
): void {
	const other = ledger.database
		.prepare<[number, number, number], { name: string; fromMs: number; untilMs: number | null }>(
			`SELECT b.name, p.from_ms AS fromMs, p.until_ms AS untilMs
			FROM fitted_period p JOIN build b ON b.id = p.build_id
			WHERE p.wheel_id = ? AND p.from_ms < ? AND coalesce(p.until_ms, 9e15) > ? ORDER BY p.from_ms`
		)
		.get(wheel.id, wanted.untilMs ?? 9e15, wanted.fromMs);
	if (!other) return;
	const until = other.untilMs === null ? 'and still is' : `until ${inWorkshopZone(ledger, other.untilMs)}`;
	throw new LedgerRefusal(
		'overlap',
		`On ${wheel.name} the build "${other.name}" was fitted from ${inWorkshopZone(ledger, other.fromMs)} ${until}; a wheel carries one build at a time.`
	);
}
