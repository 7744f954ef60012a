import type { Ledger } from '../ledger/openLedger';

/**
 * The wheel that a ride must have been ridden on because the ledger knows no other: the only wheel there
 * is, when a build was fitted on it at that time. With two wheels a person has to say which.
 *
 * @returns its id; null when it cannot be told
 */
export function onlyWheelAt(ledger: Ledger, startMs: number, endMs: number): number | null {
	const wheels = ledger.database.prepare<[], { id: number }>('SELECT id FROM wheel LIMIT 2').all();
	if (wheels.length !== 1) return null;
	const fitted = ledger.database
		.prepare(
			`SELECT 1 FROM fitted_period WHERE wheel_id = ? AND withdrawn_ms IS NULL AND from_ms <= ?
				AND coalesce(until_ms, 9e15) > ?`
		)
		.get(wheels[0].id, endMs, startMs);
	return fitted ? wheels[0].id : null;
}
