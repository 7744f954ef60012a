/** devices that lost their clock begin at an epoch: 1970, 1980 (GPS), 1989 (FIT), 2000, one GPS round later 1999 */
const EARLIEST_MS = Date.UTC(2005, 0, 1);
/** a local time written as UTC is up to 14 hours ahead; the rest is slack */
const AHEAD_MS = 26 * 3600 * 1000;

/**
 * Whether a recording's clock looks wrong: it began before devices of this kind were recorded with, or after
 * the file was taken into the ledger. Such a ride would be filed under a build, a day and an age that it does
 * not belong to, so a person is asked (both bounds are common practice, no source).
 *
 * @param startMs start of the recording by its own clock, milliseconds since 1970 UTC
 * @param takenMs when the file became a ride, by the ledger's clock
 * @example clockLooksWrong(Date.UTC(1989, 11, 31), Date.UTC(2026, 4, 4)) // true
 */
export function clockLooksWrong(startMs: number, takenMs: number): boolean {
	return !(startMs >= EARLIEST_MS && startMs <= takenMs + AHEAD_MS);
}
