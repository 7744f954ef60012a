import type { SlipMark } from './strip';
import type { StripPlaces } from './stripPlaces';

/** Up to this length every event has its span, seconds. */
const LONG_S = 900;

/** The events in view whose spans are drawn: on a long stretch those apart from the rate are rings and nothing more. */
export function prominentSlips(
	slips: readonly SlipMark[],
	places: StripPlaces,
	selectedId: number | null
): SlipMark[] {
	const long = places.window[1] - places.window[0] > LONG_S;
	return slips.filter(
		({ id, startS, endS, standing }) =>
			places.shows([startS, endS]) && (!long || standing !== 'apart' || id === selectedId)
	);
}
