import { LedgerRefusal } from '../refusal';

/** ISO 8601 in UTC, as views carry it. */
export function toInstant(ms: number): string {
	return new Date(ms).toISOString();
}

const ZONED = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2})$/;
const EARLIEST_MS = Date.UTC(1990, 0, 1);
const LATEST_MS = Date.UTC(2100, 0, 1);

/**
 * Milliseconds since 1970 UTC of an ISO 8601 instant that names its zone (Z or an offset): without one
 * the same text would mean different instants on different machines.
 *
 * @throws LedgerRefusal wrong-value for anything else, and for years outside 1990 to 2099
 */
export function fromInstant(text: string): number {
	const ms = ZONED.test(text) ? Date.parse(text) : NaN;
	if (!Number.isFinite(ms))
		throw new LedgerRefusal('wrong-value', `"${text}" is no date and time with a zone.`);
	if (ms < EARLIEST_MS || ms >= LATEST_MS)
		throw new LedgerRefusal('wrong-value', `${text} is outside the years 1990 to 2099.`);
	return ms;
}
