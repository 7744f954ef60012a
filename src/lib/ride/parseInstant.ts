const PATTERN = /^(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d{1,9})?)(Z|[+-]\d\d:\d\d)?$/;

export interface Instant {
	/** milliseconds since 1970 UTC */
	readonly atMs: number;
	/** local time minus UTC in seconds where the text names a zone other than UTC; null = it does not */
	readonly localOffsetS: number | null;
}

/**
 * Reads an instant as XML Schema and ISO 8601 write it. Without a zone it is read as UTC, never as the
 * time zone of the machine that happens to read it.
 * @param text such as 2026-05-04T08:00:00Z
 * @returns the instant, or null when the text is none
 * @example parseInstant('2026-05-04T10:00:00+02:00') // 08:00 UTC, offset 7200
 */
export function parseInstant(text: string): Instant | null {
	const match = PATTERN.exec(text.trim());
	if (!match) return null;
	const zone = match[2] ?? 'Z';
	const atMs = Date.parse(match[1] + zone);
	if (Number.isNaN(atMs)) return null;
	if (zone === 'Z') return { atMs, localOffsetS: null };
	const sign = zone.startsWith('-') ? -1 : 1;
	const offsetS = sign * (Number(zone.slice(1, 3)) * 3600 + Number(zone.slice(4, 6)) * 60);
	return { atMs, localOffsetS: offsetS };
}
