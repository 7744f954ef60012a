import { keepAnswers } from './keepAnswers';

/**
 * The instant that a wall clock in the given zone showed: what a person types into a date-and-time field
 * ("2026-05-04T18:30", workshop time) as UTC.
 *
 * @param wallClock "YYYY-MM-DDTHH:MM", seconds optional
 * @param zone IANA zone
 * @returns ISO 8601 in UTC. An hour that the clock skipped (spring) counts as if it had not yet been put
 * forward; of an hour shown twice (autumn) the first is taken. Null when it is not a date and time.
 * @example zonedInstant('2026-05-04T18:30', 'Europe/Zurich') // "2026-05-04T16:30:00.000Z"
 */
export function zonedInstant(wallClock: string, zone: string): string | null {
	const match = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:\.\d+)?)?$/.exec(wallClock.trim());
	if (!match) return null;
	const [year, month, day, hour, minute, second] = match.slice(1).map((part) => Number(part ?? 0));
	const asUtc = Date.UTC(year, month - 1, day, hour, minute, second);
	const check = new Date(asUtc);
	if (check.getUTCMonth() !== month - 1 || check.getUTCDate() !== day || hour > 23 || minute > 59)
		return null;
	// both offsets around the date are tried, so that a change of clock on that day is met from either side
	const candidates = [asUtc - 86_400_000, asUtc + 86_400_000]
		.map((around) => asUtc - zoneOffsetMs(around, zone))
		.filter((instant) => instant + zoneOffsetMs(instant, zone) === asUtc);
	const instant = candidates.length
		? Math.min(...candidates)
		: asUtc - zoneOffsetMs(asUtc - 86_400_000, zone);
	return new Date(instant).toISOString();
}

/**
 * The other way: what the wall clock in that zone shows at an instant, ready for a date-and-time field.
 *
 * @example wallClock('2026-05-04T16:30:00.000Z', 'Europe/Zurich') // "2026-05-04T18:30"
 */
export function wallClock(instant: string | number, zone: string): string {
	const ms = new Date(instant).getTime();
	return new Date(ms + zoneOffsetMs(ms, zone)).toISOString().slice(0, 16);
}

/** one a zone: making it takes half a millisecond, asking it a sixteenth of that */
const offsets = new Map<string, (atMs: number) => number>();

function zoneOffsetMs(atMs: number, zone: string): number {
	let offsetMs = offsets.get(zone);
	if (!offsetMs) offsets.set(zone, (offsetMs = keepAnswers(offsetsIn(zone))));
	return offsetMs(atMs);
}

function offsetsIn(zone: string): (atMs: number) => number {
	const clock = new Intl.DateTimeFormat('en-US', {
		timeZone: zone,
		hourCycle: 'h23',
		year: 'numeric',
		month: 'numeric',
		day: 'numeric',
		hour: 'numeric',
		minute: 'numeric',
		second: 'numeric'
	});
	return (atMs) => {
		const parts = clock.formatToParts(new Date(atMs));
		const part = (type: string) => Number(parts.find((one) => one.type === type)?.value);
		const shown = Date.UTC(
			part('year'),
			part('month') - 1,
			part('day'),
			part('hour'),
			part('minute'),
			part('second')
		);
		return shown - Math.floor(atMs / 1000) * 1000;
	};
}
