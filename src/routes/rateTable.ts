import type { ChartTable } from '$lib/charts/chartTable';
import type { BuildRow } from '$lib/server/views';

/** The rate of a build with its limits: with everything unreviewed counted, and with none of it. */
export function rateTable({ name, counted }: Pick<BuildRow, 'name' | 'counted'>): ChartTable {
	const row = (words: string, rate: BuildRow['counted']['bestCase']) => [
		name,
		words,
		rate.count,
		rate.observedM / 1000,
		rate.ratePerHundredKm,
		rate.lowerPerHundredKm,
		rate.upperPerHundredKm,
		rate.confidence
	];
	return {
		columns: [
			'build',
			'unreviewed_count_as',
			'slips',
			'observed_km',
			'per_100_observed_km',
			'lower',
			'upper',
			'confidence'
		],
		rows: [row('slips', counted.worstCase), row('none', counted.bestCase)]
	};
}
