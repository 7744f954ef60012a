import { changesDuringRide } from '$lib/hardware/changesDuringRide';
import type { Actor } from '../actor';
import { listPeriods } from '../hardware/periodRows';
import { toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { LedgerRefusal } from '../refusal';
import { rideFacts } from './rideFacts';
import { readCuts, saveParts } from './rideParts';

/**
 * Splits a ride where the build changed: each part belongs to its build by time, events by their start. The
 * cuts are kept, not the builds: when the fitted periods are corrected later, the ride asks again.
 *
 * @throws LedgerRefusal not-found; conflict when no build changed during the ride, when it is withdrawn, or
 *   while its traces are being made
 */
export function splitRide(ledger: Ledger, actor: Actor, rideId: number): void {
	const { database } = ledger;
	database
		.transaction(() => {
			const ride = rideFacts(ledger, rideId);
			if (!ride) throw new LedgerRefusal('not-found', 'There is no such ride.');
			const changes = changesDuringRide(ride, listPeriods(ledger));
			if (ride.build.kind !== 'across a change' || changes.length === 0)
				throw new LedgerRefusal('conflict', 'No build changed during this ride; there is nothing to split.');
			if (ride.withdrawnReason !== null)
				throw new LedgerRefusal('conflict', 'This ride is withdrawn; take it back in first.');
			const before = readCuts(ledger, rideId).get(rideId) ?? [];
			database.prepare('DELETE FROM ride_cut WHERE ride_id = ?').run(rideId);
			const add = database.prepare('INSERT INTO ride_cut VALUES (?, ?, ?, ?)');
			for (const atMs of changes) add.run(rideId, atMs, actor.personId, ledger.now());
			measure(ledger, rideId);
			leaveTrail(ledger, actor, 'split', 'ride', rideId, {
				before: before.map(toInstant),
				after: changes.map(toInstant)
			});
		})
		.immediate();
}

/** Parts by every version that has a result; the current one must be measured, or the ride would vanish. */
function measure(ledger: Ledger, rideId: number): void {
	const versions = ledger.database
		.prepare<[number], { version: number }>('SELECT version FROM result WHERE ride_id = ?')
		.all(rideId);
	const measured = versions.filter(({ version }) => saveParts(ledger, rideId, version));
	if (measured.some(({ version }) => version === currentVersion(ledger))) return;
	throw new LedgerRefusal(
		'conflict',
		'The traces of this ride are being made again; split it when its strips are shown.'
	);
}

/**
 * Takes a split back: the ride waits for an answer again.
 *
 * @throws LedgerRefusal conflict when it is not split
 */
export function joinRide(ledger: Ledger, actor: Actor, rideId: number): void {
	ledger.database
		.transaction(() => {
			if (!removeCuts(ledger, actor, rideId)) throw new LedgerRefusal('conflict', 'This ride is not split.');
		})
		.immediate();
}

/**
 * Takes the cuts of a ride away, with a trail. Belongs in the caller's transaction.
 *
 * @returns false when it had none
 */
export function removeCuts(ledger: Ledger, actor: Actor, rideId: number): boolean {
	const before = readCuts(ledger, rideId).get(rideId);
	if (!before) return false;
	ledger.database.prepare('DELETE FROM ride_cut WHERE ride_id = ?').run(rideId);
	ledger.database.prepare('DELETE FROM ride_part WHERE ride_id = ?').run(rideId);
	leaveTrail(ledger, actor, 'took the split back', 'ride', rideId, { before: before.map(toInstant) });
	return true;
}
