import type { Formats } from '$lib/ui/formats';

const MINUTE_MS = 60_000;

/**
 * When something was, in words: "less than a minute ago", "3 minutes ago", from an hour on day and time.
 *
 * @param instant ISO 8601
 */
export function howLongAgo(
	instant: string,
	formats: Pick<Formats, 'number' | 'dateTime'>,
	nowMs = Date.now()
): string {
	const minutes = Math.floor((nowMs - Date.parse(instant)) / MINUTE_MS);
	if (minutes < 0 || minutes >= 60) return formats.dateTime(instant);
	if (minutes === 0) return 'less than a minute ago';
	return minutes === 1 ? 'a minute ago' : `${formats.number(minutes)} minutes ago`;
}
