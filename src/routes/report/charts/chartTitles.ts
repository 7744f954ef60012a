import type { ChartName } from '$lib/server';

/** The charts that can be had as files, in the order of their page. */
export const CHART_TITLES: readonly { readonly name: ChartName; readonly title: string }[] = [
	{ name: 'rates', title: 'Rates with their limits' },
	{ name: 'mean-slips', title: 'Mean slips of one wheel over distance' },
	{ name: 'slips-over-distance', title: 'Counted slips over distance' },
	{ name: 'over-age', title: 'Rate over distance' },
	{ name: 'over-torque', title: 'Rate by hub torque' },
	{ name: 'torque-curve', title: 'Slips in a power stroke against hub torque' },
	{ name: 'over-hours', title: 'Rate by hour of the ride' }
];
