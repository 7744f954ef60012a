import type { Standing } from '$lib/charts/strip';
import type { EventView } from '$lib/server/views';
import { countsInRate } from '$lib/slip/countsInRate';

/** How an event stands: in the rate (confirmed or not reviewed), rejected, or listed apart from the rate. */
export function standingOf(event: EventView): Standing {
	if (event.verdict?.verdict === 'rejected') return 'rejected';
	if (!countsInRate(event)) return 'apart';
	return event.verdict ? 'confirmed' : 'unreviewed';
}

/** The same in words, for the table and the open event. */
export function standingWords(event: EventView): string {
	const standing = standingOf(event);
	if (standing === 'apart') {
		const why =
			event.kind !== 'slip'
				? 'of another kind'
				: !event.observed
					? 'begins where the recording is not observed'
					: 'smaller than the reference size';
		return `${event.verdict ? 'confirmed, ' : ''}apart from the rate: ${why}`;
	}
	if (standing === 'unreviewed') return 'not reviewed';
	if (standing === 'rejected') return `rejected: ${event.verdict?.reason ?? 'other'}`;
	return 'confirmed';
}
