import type { Ledger } from '../ledger/openLedger';

/** How the ledger stood when figures were computed. */
export interface FigureKey {
	/** every change of the evidence */
	readonly changes: number;
	/** the changes among them that the queue did not make */
	readonly elsewhere: number;
	/** how often a person wrote something down, evidence or not: hardware that figures stand beside is not evidence */
	readonly byPeople: number;
}

export function figureKey(ledger: Ledger): FigureKey {
	return ledger.database
		.prepare<[], FigureKey>(
			'SELECT changes, changes - by_queue AS elsewhere, by_people AS byPeople FROM evidence'
		)
		.get()!;
}

/** Nothing changed in between. */
export function isSame(a: FigureKey, b: FigureKey): boolean {
	return a.changes === b.changes && sameWord(a, b);
}

/** Nothing but files that the queue read by itself came in between: nobody said, judged or corrected anything. */
export function sameWord(a: FigureKey, b: FigureKey): boolean {
	return a.elsewhere === b.elsewhere && a.byPeople === b.byPeople;
}

/** Rides that came in, or were computed again, since. */
export function ridesSince(ledger: Ledger, key: FigureKey): number {
	return ledger.database
		.prepare<[number], number>('SELECT count(*) FROM evidence_ride WHERE changed_at > ?')
		.pluck()
		.get(key.changes)!;
}
