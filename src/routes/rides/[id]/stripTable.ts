import type { ChartTable } from '$lib/charts/chartTable';
import type { StripData } from '$lib/charts/rideStripData';
import type { TimeWindow } from '$lib/charts/timeWindow';
import { DRIVE_STATES } from '$lib/slip/analysis';

const DECIMALS = 3;

/**
 * Every second of the shown stretch as it is known; an empty cell is not known.
 *
 * @param gained the gained angle as the strip counts it, hub degrees
 * @param shown seconds [from, to]
 */
export function stripTable(data: StripData, gained: Float32Array, shown: TimeWindow): ChartTable {
	const { raw } = data;
	const first = Math.max(0, Math.ceil(shown[0]));
	const last = Math.min(data.length - 1, Math.floor(shown[1]));
	const known = (value: number) => (Number.isNaN(value) ? null : Number(value.toFixed(DECIMALS)));
	return {
		columns: [
			'time_s',
			'distance_m',
			'drive',
			'gained_hub_deg',
			'cadence_rpm',
			'engaged_cadence_rpm',
			'speed_kmh',
			'power_w',
			'mean_hub_torque_nm',
			'height_m',
			'would_show_from_crank_deg'
		],
		rows: Array.from({ length: Math.max(0, last - first + 1) }, (_, row) => {
			const i = first + row;
			return [
				i,
				known(data.distanceM[i]),
				DRIVE_STATES[data.state[i]] ?? null,
				known(gained[i]),
				known(raw.cadenceRpm[i]),
				known(raw.engagedCadenceRpm[i]),
				known(raw.speedKmh[i]),
				known(raw.powerW[i]),
				known(raw.hubTorqueNm[i]),
				known(raw.altitudeM[i]),
				known(data.detectionLimitCrankDeg[i])
			];
		})
	};
}
