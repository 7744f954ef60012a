import { axisTicks } from './axisTicks';
import type { ChartFormats } from './strip';
import type { StripPlaces } from './stripPlaces';
import { toTenth } from './toTenth';

/** room of a label with what keeps it apart from the next, pixels */
const ROOM = 78;

/** The round places on the axis under a strip: where they lie, pixels, and what is written there. */
export function stripTicks(
	places: Pick<StripPlaces, 'axis' | 'span' | 'left' | 'right' | 'onAxis'>,
	formats: Pick<ChartFormats, 'clock' | 'number'>
): { readonly place: number; readonly x: number; readonly label: string }[] {
	const most = Math.max(2, Math.floor((places.right - places.left) / ROOM));
	return axisTicks(places.axis, places.span, most, formats).map(({ place, label }) => ({
		place,
		x: toTenth(places.onAxis(place)),
		label
	}));
}
