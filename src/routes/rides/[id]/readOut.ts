import type { ChartFormats } from '$lib/charts/strip';
import { DRIVE_STATES } from '$lib/slip/analysis';
import type { StripData } from './rideStripData';

export interface ReadOutItem {
	readonly name: string;
	readonly value: string;
}

/**
 * Everything known of one second of the ride, in the order of the strips.
 *
 * @param atS seconds from the first record; outside the ride the nearest second is read
 */
export function readOut(data: StripData, atS: number, formats: ChartFormats): ReadOutItem[] {
	const i = Math.min(data.length - 1, Math.max(0, Math.round(atS)));
	const unit = (value: number, name: string, decimals = 0) =>
		Number.isNaN(value) ? 'not known' : `${formats.number(value, decimals)}\u00a0${name}`;
	const raw = data.raw;
	const limit = data.detectionLimitCrankDeg[i];
	return [
		{ name: 'Time', value: formats.clock(i) },
		{ name: 'Distance', value: unit(data.distanceM[i] / 1000, 'km', 2) },
		{ name: 'Drive', value: DRIVE_STATES[data.state[i]] ?? 'not known' },
		{ name: 'Gained', value: unit(raw.gained[i], 'hub°') },
		{ name: 'Cadence', value: unit(raw.cadenceRpm[i], 'rpm') },
		{ name: 'Engaged', value: unit(raw.engagedCadenceRpm[i], 'rpm') },
		{ name: 'Speed', value: unit(raw.speedKmh[i], 'km/h', 1) },
		{ name: 'Power', value: unit(raw.powerW[i], 'W') },
		{ name: 'Hub torque', value: unit(raw.hubTorqueNm[i], 'Nm') },
		{ name: 'Would show from', value: Number.isNaN(limit) ? 'nothing' : `${formats.number(limit)}°` }
	];
}
