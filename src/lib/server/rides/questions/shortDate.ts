import type { Ledger } from '../../ledger/openLedger';
import { getSettings } from '../../settings/settings';

/** A day as the workshop's people read it, for reasons: "4 May 2026". */
export function shortDate(ledger: Ledger, ms: number): string {
	const { timeZone } = getSettings(ledger);
	return new Intl.DateTimeFormat('en-GB', {
		timeZone,
		day: 'numeric',
		month: 'long',
		year: 'numeric'
	}).format(ms);
}
