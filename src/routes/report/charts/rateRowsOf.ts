import type { BuildTold } from '$lib/server';

/** The rate of a build as rows of the chart of limits: two while events are unreviewed. */
export function rateRowsOf({ name, unreviewed, worst, best }: BuildTold, named: boolean) {
	const row = (label: string, { pooled }: BuildTold['worst']) => ({
		label: named ? `${name}: ${label}` : label,
		count: pooled.count,
		rate: pooled.ratePerHundredKm,
		lower: pooled.lowerPerHundredKm,
		upper: pooled.upperPerHundredKm
	});
	return unreviewed > 0
		? [row('unreviewed counted', worst), row('confirmed only', best)]
		: [row('slips per 100 observed km', worst)];
}
