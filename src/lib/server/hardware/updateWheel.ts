import type { Actor } from '../actor';
import { factChanges } from '../ledger/factChanges';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { refuseStale } from '../ledger/refuseStale';
import { LedgerRefusal } from '../refusal';
import { inWorkshopZone } from '../settings/inWorkshopZone';

import { refuseTakenName } from './refuseTakenName';
import { findWheel, wheelFacts, type WheelInput } from './wheels';

/**
 * Corrects what is written down of a wheel. The whole form counts: what it leaves empty is not said.
 *
 * @param seenVersion row version that the form was filled from
 * @param options.why stands in the trail beside the values
 * @throws LedgerRefusal not-found; conflict when somebody else changed it meanwhile, or the name is taken;
 *   wrong-value, also for a first day that lies after a build was fitted
 */
export function updateWheel(
	ledger: Ledger,
	actor: Actor,
	wheelId: number,
	input: WheelInput,
	seenVersion: number,
	options: { why?: string; example?: boolean } = {}
): void {
	const facts = wheelFacts(ledger, input, options);
	ledger.database
		.transaction(() => {
			const before = findWheel(ledger, wheelId);
			refuseStale(ledger, 'wheel', wheelId, before.rowVersion, seenVersion);
			if (facts.name.toLowerCase() !== before.name.toLowerCase())
				refuseTakenName(ledger, 'wheel', facts.name);
			refuseAfterFirstUse(ledger, wheelId, facts.existsFromMs);
			const stored = { ...before, cassette: before.cassette && JSON.stringify(before.cassette) };
			const changed = factChanges(stored, facts);
			if (changed === null) return;
			ledger.database
				.prepare(
					`UPDATE wheel SET name = @name, hub = @hub, serial = @serial, over_locknut_mm = @overLocknutMm,
						axle = @axle, rim_offset_wanted_mm = @rimOffsetWantedMm, tyre_etrto = @tyreEtrto,
						cassette = @cassette, circumference_m = @circumferenceM, exists_from_ms = @existsFromMs,
						row_version = row_version + 1 WHERE id = @wheelId`
				)
				.run({ ...facts, wheelId });
			leaveTrail(
				ledger,
				actor,
				'corrected',
				'wheel',
				wheelId,
				options.why ? { ...changed, why: options.why } : changed
			);
		})
		.immediate();
}

/** A wheel cannot begin after something was done to it. */
function refuseAfterFirstUse(ledger: Ledger, wheelId: number, existsFromMs: number | null): void {
	if (existsFromMs === null) return;
	const first = ledger.database
		.prepare<{ wheelId: number }, { ms: number | null }>(
			`SELECT min(ms) AS ms FROM (
				SELECT from_ms AS ms FROM fitted_period WHERE wheel_id = @wheelId AND withdrawn_ms IS NULL
				UNION ALL SELECT at_ms FROM service WHERE wheel_id = @wheelId AND withdrawn_ms IS NULL
				UNION ALL SELECT at_ms FROM unlogged_distance WHERE wheel_id = @wheelId AND withdrawn_ms IS NULL
				UNION ALL SELECT at_ms FROM odometer_reading WHERE wheel_id = @wheelId AND withdrawn_ms IS NULL
				UNION ALL SELECT from_ms FROM wheel_on_bike WHERE wheel_id = @wheelId AND withdrawn_ms IS NULL)`
		)
		.get({ wheelId })!.ms;
	if (first === null || first >= existsFromMs) return;
	throw new LedgerRefusal(
		'wrong-value',
		`Something was written down of this wheel on ${inWorkshopZone(ledger, first)} already: it cannot exist only from later on.`
	);
}
