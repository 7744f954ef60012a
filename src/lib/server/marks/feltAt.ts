import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { getSettings } from '../settings/settings';

const MINUTE_MS = 60_000;
/** a watch and a recording need not agree to the minute */
const AROUND_MS = 5 * MINUTE_MS;

/**
 * The instant that a rider's watch showed as a time of day during a ride, also across midnight.
 *
 * @param clock "14:20"
 * @throws LedgerRefusal not-found; wrong-value for a time that the ride does not hold
 */
export function feltAt(ledger: Ledger, rideId: number, clock: string): number {
	const ride = ledger.database
		.prepare<[number], { startMs: number; durationS: number; offsetS: number | null }>(
			`SELECT started_ms AS startMs, duration_s AS durationS, local_offset_s AS offsetS
			FROM ride WHERE id = ?`
		)
		.get(rideId);
	if (!ride) throw new LedgerRefusal('not-found', 'There is no such ride.');
	if (!/^([01]?\d|2[0-3]):[0-5]\d$/.test(clock.trim()))
		throw new LedgerRefusal('wrong-value', 'Give the time of day, as in 14:20.');
	const wanted = clock.trim().padStart(5, '0');
	const shows = watchOf(ride.offsetS, getSettings(ledger).timeZone);
	// the minute in which it began, and some before and after
	const fromMs = Math.floor(ride.startMs / MINUTE_MS) * MINUTE_MS - AROUND_MS;
	const untilMs = ride.startMs + ride.durationS * 1000 + AROUND_MS;
	for (let atMs = fromMs; atMs < untilMs; atMs += MINUTE_MS) if (shows(atMs) === wanted) return atMs;
	throw new LedgerRefusal(
		'wrong-value',
		'This ride was not under way at that time. Look at its start and end, and give a time in between.'
	);
}

/** What a watch shows at an instant: in the local time that the ride recorded, else in the workshop's zone. */
function watchOf(offsetS: number | null, timeZone: string): (ms: number) => string {
	if (offsetS !== null) return (ms) => new Date(ms + offsetS * 1000).toISOString().slice(11, 16);
	const format = new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit' });
	return (ms) => format.format(ms);
}
