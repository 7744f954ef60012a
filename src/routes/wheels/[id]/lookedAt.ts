import { fromInstant, LedgerRefusal, wheelStateAt, type Ledger, type WheelState } from '$lib/server';

/**
 * What the address asks to look at: `?at=` an instant or `?km=` a place on the distance axis.
 *
 * @returns null when it asks for nothing, or for what is no instant and no distance
 */
export function lookedAt(ledger: Ledger, wheelId: number, query: URLSearchParams): WheelState | null {
	const at = query.get('at');
	const km = query.get('km');
	if (at !== null) {
		try {
			return wheelStateAt(ledger, wheelId, { atMs: fromInstant(at) });
		} catch (refused) {
			if (refused instanceof LedgerRefusal) return null;
			throw refused;
		}
	}
	const metres = km === null || km.trim() === '' ? NaN : Number(km.replace(',', '.')) * 1000;
	return Number.isFinite(metres) ? wheelStateAt(ledger, wheelId, { atM: metres }) : null;
}
