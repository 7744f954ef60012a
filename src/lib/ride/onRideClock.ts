import type { RecordedGearEvent } from './recordedRide';
import type { GearEvent, RiderMark, Span } from './ride';

/** a shift before the first record, or a lap after the last, this near still belongs to the ride, seconds */
const NEAR_S = 60;

/**
 * Marks on the ride's clock, each instant once and in order.
 * @param marksAtMs instants, milliseconds
 * @param startedAtMs instant of the first record
 * @param durationS time of the last record
 * @returns marks after the start (a lap at the very start is the device's: nobody has felt anything yet)
 */
export function marksWithin(
	marksAtMs: readonly number[],
	startedAtMs: number,
	durationS: number
): RiderMark[] {
	const times = new Set<number>();
	for (const atMs of marksAtMs) {
		const timeS = (atMs - startedAtMs) / 1000;
		if (timeS > 0 && timeS <= durationS + NEAR_S) times.add(Math.min(timeS, durationS));
	}
	return [...times].sort((a, b) => a - b).map((timeS) => ({ timeS }));
}

/**
 * Pauses on the ride's clock, cut to the ride, in order; those that touch become one.
 * @param pausesMs [stopped, started again], milliseconds
 * @param startedAtMs instant of the first record
 * @param durationS time of the last record
 * @returns spans apart from each other, in order
 */
export function pausesWithin(
	pausesMs: readonly (readonly [number, number])[],
	startedAtMs: number,
	durationS: number
): Span[] {
	const spans = pausesMs
		.map(([stopMs, startMs]): Span => {
			return [
				Math.max(0, (stopMs - startedAtMs) / 1000),
				Math.min(durationS, (startMs - startedAtMs) / 1000)
			];
		})
		.filter(([startS, endS]) => endS > startS)
		.sort((a, b) => a[0] - b[0]);
	const apart: Span[] = [];
	for (const span of spans) {
		const last = apart.at(-1);
		if (last && span[0] <= last[1]) apart[apart.length - 1] = [last[0], Math.max(last[1], span[1])];
		else apart.push(span);
	}
	return apart;
}

/**
 * Shifts on the ride's clock, in order; one shortly before the first record tells the gear at the start.
 * @param events with instants in milliseconds
 * @param startedAtMs instant of the first record
 * @param durationS time of the last record
 * @returns shifts with times from 0 to the last record
 */
export function gearEventsWithin(
	events: readonly RecordedGearEvent[],
	startedAtMs: number,
	durationS: number
): GearEvent[] {
	const within: GearEvent[] = [];
	for (const { atMs, ...gear } of events) {
		const timeS = (atMs - startedAtMs) / 1000;
		if (timeS >= -NEAR_S && timeS <= durationS) within.push({ timeS: Math.max(0, timeS), ...gear });
	}
	return within.sort((a, b) => a.timeS - b.timeS);
}
