import type { Actor } from '../actor';
import type { Ledger } from '../ledger/openLedger';
import { importViews } from '../queue/importQueue';
import type { RideHints } from '../queue/rideHints';
import { IS_OWN } from '../rides/ownRides';
import type { ImportView } from '../views';

/** Whether a person began this upload; its name is random, but a rider may not finish another's. */
export function ownsUpload(ledger: Ledger, personId: number, uploadId: string): boolean {
	const row = ledger.database
		.prepare('SELECT 1 FROM upload u JOIN import i ON i.id = u.import_id WHERE u.id = ? AND i.actor_id = ?')
		.get(uploadId, personId);
	return row !== undefined;
}

/** as many as are told one by one */
const MOST_NOT_READ = 500;
const TOLD_FOR_MS = 14 * 24 * 3600 * 1000;

/**
 * The newest files that a person handed in, and of the last two weeks each one that was not read, with the reason: an
 * archive from a phone may hold hundreds. Whose ride a known file became is not said.
 */
export function ownImports(ledger: Ledger, personId: number, limit: number): ImportView[] {
	const newest = importViews(ledger, 'i.actor_id = @personId', { personId }, limit);
	const notRead = importViews(
		ledger,
		"i.actor_id = @personId AND i.stage IN ('refused', 'failed') AND i.changed_ms >= @since AND i.id < @below",
		{ personId, since: ledger.now() - TOLD_FOR_MS, below: newest.at(-1)?.id ?? 0 },
		MOST_NOT_READ
	);
	return [...newest, ...notRead].map((one) => ({ ...one, detail: null, rideId: null }));
}

/** Wheels that a person has ridden: of others a rider does not learn. */
export function ownWheels(ledger: Ledger, personId: number): { id: number; name: string }[] {
	return ledger.database
		.prepare<[object], { id: number; name: string }>(
			`SELECT DISTINCT w.id, w.name FROM ride r JOIN wheel w ON w.id = r.wheel_id WHERE ${IS_OWN} ORDER BY w.name`
		)
		.all({ personId });
}

/**
 * What a person may say of a file beforehand: a rider hands in own rides only, on wheels that he rode before,
 * and whether the road was wet and what laps mean; all else the workshop says.
 */
export function hintsFrom(ledger: Ledger, actor: Actor, hints: RideHints): RideHints {
	if (actor.role !== 'rider') return hints;
	const { wet, lapsMeanSlips, wheelId } = hints;
	// most say nothing of it: all of a rider's rides are not looked at for nothing
	const known = wheelId != null && ownWheels(ledger, actor.personId).some(({ id }) => id === wheelId);
	return { riderId: actor.personId, wet, lapsMeanSlips, ...(known ? { wheelId } : {}) };
}
