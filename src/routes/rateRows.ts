import type { CountView, RateView } from '$lib/server/views';

/** The intervals of one build as the chart takes them: two while anything is unreviewed, else one. */
export function rateRows(counted: CountView) {
	const row = (label: string, rate: RateView) => ({
		label,
		count: rate.count,
		rate: rate.ratePerHundredKm,
		lower: rate.lowerPerHundredKm,
		upper: rate.upperPerHundredKm
	});
	return counted.unreviewed > 0
		? [row('unreviewed counted', counted.worstCase), row('confirmed only', counted.bestCase)]
		: [row('slips per 100 observed km', counted.worstCase)];
}
