import type { ChartTable } from '$lib/charts/chartTable';
import type { StripData } from '$lib/charts/rideStripData';
import type { TimeWindow } from '$lib/charts/timeWindow';

/** The dots of the gear fan: each driven second of the shown stretch. */
export function fanTable(
	{ raw, length }: Pick<StripData, 'raw' | 'length'>,
	driven: (second: number) => boolean,
	shown: TimeWindow
): ChartTable {
	const rows: number[][] = [];
	const last = Math.min(length - 1, Math.ceil(shown[1]));
	for (let s = Math.max(0, Math.floor(shown[0])); s <= last; s++) {
		const [speed, cadence] = [raw.speedKmh[s], raw.cadenceRpm[s]];
		if (driven(s) && speed > 0 && cadence > 0)
			rows.push([s, Number(speed.toFixed(3)), Number(cadence.toFixed(2))]);
	}
	return { columns: ['time_s', 'speed_kmh', 'cadence_rpm'], rows };
}
