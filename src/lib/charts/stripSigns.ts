import { glyphSize } from './glyphSize';
import type { SceneSigns } from './paintScene';
import { prominentSlips } from './prominentSlips';
import { slipLabels } from './slipLabels';
import type { SharedStrip, SlipMark } from './strip';

/** up to so many events in view their sizes are written, too */
const MOST_WITH_SIZE = 8;

/**
 * Signs of events with their numbers, and rider marks: those that a window shows.
 *
 * @param marksS rider marks, seconds
 */
export function stripSigns(
	{ places, slips, selectedId, formats }: SharedStrip,
	marksS: readonly number[]
): SceneSigns {
	const named = prominentSlips(slips, places, selectedId);
	const shown = slips.filter(({ startS, endS }) => places.shows([startS, endS]));
	const words = ({ number, overrunCrankDeg }: SlipMark) => [
		...(named.length > MOST_WITH_SIZE || overrunCrankDeg === undefined
			? []
			: [`${formats.number(number)}: ${formats.number(overrunCrankDeg)}°`]),
		formats.number(number)
	];
	const { place, right } = places;
	return {
		slips: shown.map(({ id, startS, standing, overrunCrankDeg, strokes = 0 }) => {
			return { id, x: place(startS), standing, size: glyphSize(overrunCrankDeg), strokes };
		}),
		numbers: slipLabels(named, shown, { placeOf: place, right }, words, selectedId).map(
			({ slip: { id }, text, x }) => ({ id, text, x, selected: id === selectedId })
		),
		marks: marksS.filter((timeS) => places.shows([timeS, timeS])).map(place)
	};
}
