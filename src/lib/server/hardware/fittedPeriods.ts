import type { Actor } from '../actor';
import { fromInstant, toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { giveRidesTheOnlyWheel } from '../rides/giveRidesTheOnlyWheel';
import { inWorkshopZone } from '../settings/inWorkshopZone';
import { findBuild, type BuildRecord } from './builds';
import {
	findPeriod,
	movePeriod,
	openPeriod,
	refuseBeforeWheel,
	refuseFuture,
	refuseOverlap,
	refuseWrongOrder
} from './periodRows';
import { refuseSerialClash } from './refuseSerialClash';
import { findWheel } from './wheels';

/**
 * Fits a build on a wheel from an instant on. The build that was on it comes off at that instant.
 *
 * @param options.example the invented programme keeps its dates, whatever this machine's clock says
 * @returns id of the new period
 * @throws LedgerRefusal not-found; overlap when a period that has begun later or has ended stands in the
 *   way; wrong-value for instants in the wrong order, before the wheel or still to come; conflict when a
 *   piece with a serial is in another hub at that time, or when a withdrawn build would be on it now
 */
export function fitBuild(
	ledger: Ledger,
	actor: Actor,
	input: { wheelId: number; buildId: number; from: string; until?: string | null },
	options: { example?: boolean } = {}
): number {
	const fromMs = fromInstant(input.from);
	const untilMs = input.until ? fromInstant(input.until) : null;
	refuseWrongOrder(ledger, fromMs, untilMs);
	if (!options.example) for (const ms of [fromMs, untilMs]) refuseFuture(ledger, ms);
	return ledger.database
		.transaction((): number => {
			const wheel = findWheel(ledger, input.wheelId);
			const build = findBuild(ledger, input.buildId);
			refuseWithdrawnBuild(build, untilMs);
			refuseBeforeWheel(ledger, wheel, fromMs);
			const open = openPeriod(ledger, wheel.id, fromMs);
			if (open) endPeriod(ledger, actor, open.id, fromMs);
			refuseOverlap(ledger, wheel, { fromMs, untilMs });
			const { lastInsertRowid } = ledger.database
				.prepare(
					'INSERT INTO fitted_period (wheel_id, build_id, from_ms, until_ms, created_ms) VALUES (?, ?, ?, ?, ?)'
				)
				.run(wheel.id, build.id, fromMs, untilMs, ledger.now());
			refuseSerialClash(ledger, build.id);
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

/** What was withdrawn can have been on a wheel, but nobody puts it on one to ride it. */
export function refuseWithdrawnBuild({ state, name }: BuildRecord, untilMs: number | null): void {
	if (state !== 'withdrawn' || untilMs !== null) return;
	throw new LedgerRefusal(
		'conflict',
		`The build "${name}" is withdrawn: take it back in and check it on the bench first, or say until when it was on this wheel.`
	);
}

/**
 * Takes a build off its wheel.
 *
 * @throws LedgerRefusal not-found; conflict when it is off already; wrong-value before it was fitted or in
 *   the future
 */
export function endFittedPeriod(ledger: Ledger, actor: Actor, periodId: number, until: string): void {
	const untilMs = fromInstant(until);
	refuseFuture(ledger, untilMs);
	ledger.database
		.transaction(() => {
			const period = findPeriod(ledger, periodId);
			if (period.untilMs !== null)
				throw new LedgerRefusal(
					'conflict',
					`This build came off on ${inWorkshopZone(ledger, period.untilMs)} already.`
				);
			endPeriod(ledger, actor, periodId, untilMs);
		})
		.immediate();
}

function endPeriod(ledger: Ledger, actor: Actor, periodId: number, untilMs: number): void {
	const { fromMs } = findPeriod(ledger, periodId);
	refuseWrongOrder(ledger, fromMs, untilMs);
	movePeriod(ledger, periodId, { fromMs, untilMs });
	leaveTrail(ledger, actor, 'took off', 'fitted period', periodId, { until: toInstant(untilMs) });
}
