import type { FittedPeriod } from '$lib/hardware/buildOfRide';
import type { Actor } from '../actor';
import { fromInstant, toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { giveRidesTheOnlyWheel } from '../rides/giveRidesTheOnlyWheel';
import {
	findPeriod,
	movePeriod,
	periodThatEnded,
	refuseBeforeWheel,
	refuseFuture,
	refuseOverlap,
	refuseUnseen,
	refuseWrongOrder
} from './periodRows';
import { refuseSerialClash } from './refuseSerialClash';
import { findWheel } from './wheels';

/** what is not named stays as it is */
export interface PeriodCorrection {
	from?: string;
	/** null = still fitted */
	until?: string | null;
}

/**
 * Corrects when a build was on a wheel; rides find their build anew. The build that came off at the instant
 * at which this one was fitted comes off at the corrected instant, because it is one and the same.
 *
 * @param seenVersion version that stood in the form; not given: whoever corrects has just read it
 * @throws LedgerRefusal not-found; conflict when it was corrected meanwhile; overlap with another period; wrong-value for instants in the wrong order
 *   or still to come; conflict when a piece with a serial would be in two hubs
 */
export function correctFittedPeriod(
	ledger: Ledger,
	actor: Actor,
	periodId: number,
	input: PeriodCorrection,
	seenVersion?: number
): void {
	ledger.database
		.transaction(() => {
			const before = findPeriod(ledger, periodId);
			refuseUnseen(ledger, periodId, seenVersion);
			const after = { ...before, ...readCorrection(ledger, input) };
			if (after.fromMs === before.fromMs && after.untilMs === before.untilMs) return;
			refuseWrongOrder(ledger, after.fromMs, after.untilMs);
			refuseBeforeWheel(ledger, findWheel(ledger, before.wheelId), after.fromMs);
			const ended = periodThatEnded(ledger, before.wheelId, before.fromMs);
			const neighbour = ended && ended.fromMs < after.fromMs ? ended : null;
			const changing = [periodId, ...(neighbour ? [neighbour.id] : [])];
			refuseOverlap(ledger, findWheel(ledger, before.wheelId), after, changing);
			const changes: [FittedPeriod, FittedPeriod][] = [[before, after]];
			if (neighbour) changes.push([neighbour, { ...neighbour, untilMs: after.fromMs }]);
			// the one that gives way first: the database itself refuses overlaps
			if (after.fromMs < before.fromMs) changes.reverse();
			for (const [was, becomes] of changes) change(ledger, actor, was, becomes);
			for (const [{ buildId }] of changes) refuseSerialClash(ledger, buildId);
			giveRidesTheOnlyWheel(ledger, actor);
		})
		.immediate();
}

function readCorrection(ledger: Ledger, { from, until }: PeriodCorrection) {
	const changed: { fromMs?: number; untilMs?: number | null } = {};
	if (from !== undefined) changed.fromMs = fromInstant(from);
	if (until !== undefined) changed.untilMs = until === null ? null : fromInstant(until);
	for (const ms of Object.values(changed)) refuseFuture(ledger, ms);
	return changed;
}

function change(ledger: Ledger, actor: Actor, before: FittedPeriod, after: FittedPeriod): void {
	if (before.fromMs === after.fromMs && before.untilMs === after.untilMs) return;
	movePeriod(ledger, before.id, after);
	leaveTrail(ledger, actor, 'corrected', 'fitted period', before.id, {
		before: inWords(before),
		after: inWords(after)
	});
}

function inWords({ fromMs, untilMs }: FittedPeriod) {
	return { from: toInstant(fromMs), until: untilMs === null ? null : toInstant(untilMs) };
}
