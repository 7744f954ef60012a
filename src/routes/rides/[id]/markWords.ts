import type { RideView } from '$lib/server/views';
import type { RiderMarkCounts } from '$lib/slip/riderMarkCounts';
import type { Formats } from '$lib/ui/formats';

/** "the rider pressed the lap 4 s later" for the event of that id; null when no lap means it. */
export function markWords(ride: Pick<RideView, 'riderMarks'>, eventId: number, formats: Formats) {
	const mark = ride.riderMarks.marks.find(({ event }) => event?.id === eventId);
	if (!mark?.event) return null;
	const { delayS } = mark.event;
	return delayS < 0.5
		? 'The rider pressed the lap at once.'
		: `The rider pressed the lap ${formats.number(delayS)}\u00a0s later.`;
}

/** How what the rider marked and what was found agree on observed stretches, from the reference size on. */
export function markCountWords(counts: RiderMarkCounts, formats: Formats): string {
	const figure = (count: number) => (count === 0 ? 'none' : formats.number(count));
	const { both, markOnly, detectionOnly, waiting } = counts;
	const open = `${formats.number(waiting)} ${waiting === 1 ? 'lap or event waits' : 'laps or events wait'} for an answer or a review.`;
	if (both + markOnly + detectionOnly === 0)
		return waiting === 0
			? 'Where this ride is observed, no slip of the reference size was marked and none confirmed.'
			: `Where this ride is observed nothing is decided yet: ${open}`;
	const told = `Slips of the reference size where this ride is observed: ${figure(both)} found and marked, ${figure(markOnly)} marked only, ${figure(detectionOnly)} found only.`;
	return waiting === 0 ? told : `${told} ${open}`;
}

/** Laps that still ask what they were, as a question; null when there is none. */
export function openMarkWords(open: number, formats: Formats): string | null {
	if (open === 0) return null;
	return open === 1
		? 'One lap that means a slip has no event before it: what was it?'
		: `${formats.number(open)} laps that mean slips have no event before them: what were they?`;
}
