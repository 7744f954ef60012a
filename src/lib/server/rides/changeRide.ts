import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/**
 * Takes a ride out of everything, with the reason. It stays in the ledger and can be restored.
 *
 * @throws LedgerRefusal not-found; wrong-value without a reason; conflict when it is withdrawn already
 */
export function withdrawRide(ledger: Ledger, actor: Actor, rideId: number, reason: string): void {
	const cleaned = checkText('The reason', reason, { min: 3, max: 500 });
	ledger.database
		.transaction(() => {
			if (readRide(ledger, rideId).withdrawn_ms !== null)
				throw new LedgerRefusal('conflict', 'This ride is withdrawn already.');
			ledger.database
				.prepare('UPDATE ride SET withdrawn_ms = ?, withdrawn_reason = ? WHERE id = ?')
				.run(ledger.now(), cleaned, rideId);
			leaveTrail(ledger, actor, 'withdrew', 'ride', rideId, { reason: cleaned });
			nameTheNextCopy(ledger, actor, rideId);
		})
		.immediate();
}

/** Of several copies of a withdrawn ride the first counts from now on; the others are copies of that one. */
function nameTheNextCopy(ledger: Ledger, actor: Actor, withdrawnId: number): void {
	const [first, ...others] = ledger.database
		.prepare<[number], { id: number }>(
			`SELECT id FROM ride WHERE twin_of = ? AND twin_decision IS NOT 'different ride'
				AND withdrawn_ms IS NULL ORDER BY id`
		)
		.all(withdrawnId);
	for (const { id } of others) {
		ledger.database.prepare('UPDATE ride SET twin_of = ? WHERE id = ?').run(first.id, id);
		leaveTrail(ledger, actor, 'assigned', 'ride', id, { twinOf: { before: withdrawnId, after: first.id } });
	}
}

/** @throws LedgerRefusal not-found; conflict when it is not withdrawn */
export function restoreRide(ledger: Ledger, actor: Actor, rideId: number): void {
	ledger.database
		.transaction(() => {
			const before = readRide(ledger, rideId);
			if (before.withdrawn_ms === null) throw new LedgerRefusal('conflict', 'This ride is not withdrawn.');
			ledger.database
				.prepare('UPDATE ride SET withdrawn_ms = NULL, withdrawn_reason = NULL WHERE id = ?')
				.run(rideId);
			leaveTrail(ledger, actor, 'restored', 'ride', rideId, { reason: before.withdrawn_reason });
		})
		.immediate();
}

/**
 * Answers whether a ride is the same recording as the one it looks like. The same recording counts once.
 *
 * @throws LedgerRefusal not-found; conflict when it looks like no other
 */
export function decideTwin(
	ledger: Ledger,
	actor: Actor,
	rideId: number,
	decision: 'same recording' | 'different ride'
): void {
	if (decision !== 'same recording' && decision !== 'different ride')
		throw new LedgerRefusal('wrong-value', 'Say "same recording" or "different ride".');
	ledger.database
		.transaction(() => {
			const before = readRide(ledger, rideId);
			if (before.twin_of === null)
				throw new LedgerRefusal('conflict', 'This ride does not look like another one.');
			ledger.database.prepare('UPDATE ride SET twin_decision = ? WHERE id = ?').run(decision, rideId);
			leaveTrail(ledger, actor, 'decided', 'ride', rideId, {
				twinOf: before.twin_of,
				before: before.twin_decision,
				after: decision
			});
		})
		.immediate();
}

function readRide(ledger: Ledger, rideId: number): Record<string, unknown> {
	const ride = ledger.database
		.prepare<[number], Record<string, unknown>>(
			'SELECT twin_of, twin_decision, withdrawn_ms, withdrawn_reason FROM ride WHERE id = ?'
		)
		.get(rideId);
	if (!ride) throw new LedgerRefusal('not-found', 'There is no such ride.');
	return ride;
}
