import { instantOf, type FitMessage } from './fitMessages';
import { MAX_MARKS } from './limits';

/**
 * Instants at which a person pressed the lap button. Laps that the device made by distance, time or
 * place, or because the ride ended, say nothing about what was felt.
 * @param laps lap messages; their timestamp is the end of the lap, when the button was pressed
 * @param events event messages; a user marker counts as well
 * @returns milliseconds since 1970 UTC, in file order
 */
export function fitMarks(laps: readonly FitMessage[], events: readonly FitMessage[]): number[] {
	const pressed = [
		...laps.filter((lap) => lap.lap_trigger === 'manual'),
		...events.filter((event) => event.event === 'user_marker')
	];
	return pressed
		.map((message) => instantOf(message, 'timestamp'))
		.filter((atMs) => !Number.isNaN(atMs))
		.slice(0, MAX_MARKS);
}
