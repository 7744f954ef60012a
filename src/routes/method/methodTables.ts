import type { ChartTable } from '$lib/charts/chartTable';
import type { SlipSizes } from './slipSizes';
import type { WorkedView } from './workedView';

/** Cadence second by second, a column for each size of slip. */
export function slipSizesTable({ engagedRpm, sizes }: SlipSizes): ChartTable {
	const seconds = sizes[0]?.cadenceRpm.length ?? 0;
	return {
		columns: [
			'time_s',
			'engaged_cadence_rpm',
			...sizes.map(({ crankDeg }) => `cadence_rpm_with_${crankDeg}_crank_deg`)
		],
		rows: Array.from({ length: seconds }, (_, second) => [
			second,
			engagedRpm,
			...sizes.map(({ cadenceRpm }) => cadenceRpm[second])
		])
	};
}

/** The seconds around the worked event; what was gained stands where it counts. */
export function workedTable({ seconds, event }: Pick<WorkedView, 'seconds' | 'event'>): ChartTable {
	const known = (value: number) => (Number.isNaN(value) ? null : value);
	return {
		columns: ['since_onset_s', 'cadence_rpm', 'engaged_cadence_rpm', 'power_w', 'gained_crank_deg'],
		rows: seconds.map(({ second, cadenceRpm, engagedRpm, powerW, counted, gainedDeg }) => [
			second - event.startS,
			known(cadenceRpm),
			known(engagedRpm),
			known(powerW),
			counted ? known(gainedDeg) : null
		])
	};
}
