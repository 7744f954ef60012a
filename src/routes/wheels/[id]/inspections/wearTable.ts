import type { ChartTable } from '$lib/charts/chartTable';
import type { WearView } from '$lib/server';

/** The measured means of one place over distance. */
export function wearTable({ points, unit }: Pick<WearView, 'points' | 'unit'>): ChartTable {
	return {
		columns: ['distance_km', `mean_${unit}`, 'repeats', `range_${unit}`, 'before_run_in'],
		rows: points.map((point) => [
			point.distanceM / 1000,
			point.mean,
			point.repeats,
			point.range,
			point.beforeRunIn ? 'yes' : 'no'
		])
	};
}
