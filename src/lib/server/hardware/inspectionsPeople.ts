import type { Ledger } from '../ledger/openLedger';

/** Who may be named on a wheel: riders of the invented workshop on its own wheels only. */
export function peopleForWheel(ledger: Ledger, wheelId: number): { id: number; code: string }[] {
	return ledger.database
		.prepare<[number], { id: number; code: string }>(
			`SELECT p.id, p.code FROM person p JOIN wheel w ON w.id = ?
			WHERE p.example <= w.example ORDER BY p.example, p.id`
		)
		.all(wheelId);
}
