import { instantOf, type FitMessage } from './fitMessages';
import { MAX_MARKS } from './limits';

const STOPS: readonly unknown[] = ['stop', 'stop_all', 'stop_disable', 'stop_disable_all'];

/**
 * Stretches in which the timer was stopped, by hand or by the device.
 * @param events event messages
 * @returns [stopped, started again] in milliseconds since 1970 UTC; the stop at the end is no pause
 */
export function fitPauses(events: readonly FitMessage[]): [number, number][] {
	const pauses: [number, number][] = [];
	let stoppedMs = NaN;
	for (const event of events) {
		if (event.event !== 'timer') continue;
		const atMs = instantOf(event, 'timestamp');
		if (Number.isNaN(atMs)) continue;
		if (STOPS.includes(event.event_type)) {
			if (Number.isNaN(stoppedMs)) stoppedMs = atMs;
		} else if (event.event_type === 'start') {
			if (atMs > stoppedMs && pauses.length < MAX_MARKS) pauses.push([stoppedMs, atMs]);
			stoppedMs = NaN;
		}
	}
	return pauses;
}
