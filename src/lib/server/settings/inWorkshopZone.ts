import type { Ledger } from '../ledger/openLedger';
import { getSettings } from './settings';

/** An instant as the workshop's people read it, for sentences: "4 May 2026, 10:00 (Europe/Lisbon)". */
export function inWorkshopZone(ledger: Ledger, ms: number): string {
	const { timeZone } = getSettings(ledger);
	const written = new Intl.DateTimeFormat('en-GB', {
		timeZone,
		day: 'numeric',
		month: 'long',
		year: 'numeric',
		hour: '2-digit',
		minute: '2-digit'
	}).format(ms);
	return `${written.replace(' at ', ', ')} (${timeZone})`;
}
