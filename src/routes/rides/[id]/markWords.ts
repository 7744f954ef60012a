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
		: `The rider pressed the lap ${formats.number(delayS)} s later.`;
}

/** How the two lists agree on observed stretches, as one sentence. */
export function markCountWords(counts: RiderMarkCounts, formats: Formats): string {
	const figure = (count: number) => (count === 0 ? 'none' : formats.number(count));
	const waiting =
		counts.waiting === 0
			? ''
			: ` ${formats.number(counts.waiting)} ${counts.waiting === 1 ? 'waits' : 'wait'} for a verdict or an answer.`;
	return `On observed stretches, of the reference size and confirmed or felt: ${figure(counts.both)} found and marked, ${figure(counts.markOnly)} marked only, ${figure(counts.detectionOnly)} found only.${waiting}`;
}

/** Laps that still ask what they were, as a question; null when there is none. */
export function openMarkWords(open: number, formats: Formats): string | null {
	if (open === 0) return null;
	return open === 1
		? 'One lap that means a slip has no event before it: what was it?'
		: `${formats.number(open)} laps that mean slips have no event before them: what were they?`;
}
