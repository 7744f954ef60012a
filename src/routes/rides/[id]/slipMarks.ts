import type { SlipMark, Strokes } from '$lib/charts/strip';
import type { EventView } from '$lib/server/views';
import type { Formats } from '$lib/ui/formats';
import { strengthWords } from '$lib/ui/strengthWords';
import { standingOf } from './standingOf';

const STROKES = { '': 0, weak: 1, clear: 2, strong: 3 } as const satisfies Record<string, Strokes>;

/** The events of a ride as all views mark them, numbered as in the table. */
export function slipMarks(events: readonly EventView[], formats: Pick<Formats, 'number'>): SlipMark[] {
	return events.map((event, index) => ({
		id: event.id,
		number: index + 1,
		startS: event.startS,
		endS: event.endS,
		standing: standingOf(event),
		overrunCrankDeg: event.overrunCrankDeg.value,
		strokes: STROKES[strengthWords(event.strength, formats).word]
	}));
}
