import { countsInRate } from '$lib/slip/countsInRate';
import type { EventView } from '../views';

interface Summarised {
	readonly analysed: boolean;
	readonly totalM: number;
	readonly observedM: number;
	readonly eventList: readonly Pick<EventView, 'kind' | 'overrunCrankDeg' | 'observed' | 'verdict'>[];
}

/** One sentence on what a ride showed and what it could not have shown. Never a bare "no slips". */
export function rideSummary(ride: Summarised): string {
	if (!ride.analysed) return 'The present version of the analysis has no result for this ride yet.';
	const share = ride.totalM > 0 ? ride.observedM / ride.totalM : 0;
	if (share <= 0)
		return 'This recording could not have shown a slip of the reference size anywhere; it says nothing about slips.';
	const where = `on the ${percent(share)} of this ride that could have shown one`;
	const counted = ride.eventList.filter(countsInRate);
	const standing = counted.filter(({ verdict }) => verdict?.verdict !== 'rejected');
	const further = furtherEvents(ride.eventList.length - counted.length);
	if (standing.length === 0) {
		const rejected = counted.length > 0 ? ` (${counted.length} rejected in review)` : '';
		return `No slip of the reference size was found ${where}${rejected}.${further}`;
	}
	const confirmed = standing.filter(({ verdict }) => verdict !== null).length;
	// only what somebody confirmed is called a slip
	const noun = confirmed === standing.length ? 'slip' : 'event';
	const slips = standing.length === 1 ? noun : `${noun}s`;
	const were = standing.length === 1 ? 'was' : 'were';
	return `${standing.length} ${slips} of the reference size or more ${were} found ${where}; ${reviewed(standing.length, confirmed)}.${further}`;
}

function reviewed(found: number, confirmed: number): string {
	if (confirmed === found) return found === 1 ? 'it is confirmed' : 'all are confirmed';
	return confirmed === 0
		? 'none is reviewed yet'
		: `${confirmed} confirmed, ${found - confirmed} not reviewed yet`;
}

function furtherEvents(count: number): string {
	if (count === 0) return '';
	return count === 1
		? ' One further event is smaller, of another kind or lies elsewhere.'
		: ` ${count} further events are smaller, of another kind or lie elsewhere.`;
}

/** never rounded up to "100 %" or down to "0 %" while a part is left */
function percent(share: number): string {
	const rounded = Math.round(share * 100);
	if (rounded >= 100 && share < 1) return 'more than 99 %';
	return rounded === 0 ? 'less than 1 %' : `${rounded} %`;
}
