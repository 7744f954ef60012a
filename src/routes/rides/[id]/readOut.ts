import type { StripData } from '$lib/charts/rideStripData';
import type { ChartFormats } from '$lib/charts/strip';
import { DRIVE_STATES } from '$lib/slip/analysis';

/** In the order of the strips. */
export const READ_OUT_NAMES = [
	'Time',
	'Distance',
	'Drive',
	'Gained (hub)',
	'Cadence',
	'Engaged',
	'Speed',
	'Power',
	'Hub torque',
	'Height',
	'Would show from'
] as const;

export interface ReadOutItem {
	readonly name: string;
	readonly value: string;
}

/**
 * Everything known of one second of the ride, in the order of the strips.
 *
 * @param gained the gained angle as the strip counts it, hub degrees
 * @param atS seconds from the first record; outside the ride the nearest second is read
 */
export function readOut(
	data: StripData,
	gained: Float32Array,
	atS: number,
	formats: ChartFormats
): ReadOutItem[] {
	const i = Math.min(data.length - 1, Math.max(0, Math.round(atS)));
	const unit = (value: number, name: string, decimals = 0) =>
		Number.isNaN(value) ? 'not known' : `${formats.number(value, decimals)}\u00a0${name}`;
	const raw = data.raw;
	const limit = data.detectionLimitCrankDeg[i];
	const values = [
		formats.clock(i),
		unit(data.distanceM[i] / 1000, 'km', 2),
		DRIVE_STATES[data.state[i]] ?? 'not known',
		Number.isNaN(gained[i]) ? 'not known' : `${formats.number(gained[i])}°`,
		unit(raw.cadenceRpm[i], 'rpm'),
		unit(raw.engagedCadenceRpm[i], 'rpm'),
		unit(raw.speedKmh[i], 'km/h', 1),
		unit(raw.powerW[i], 'W'),
		unit(raw.hubTorqueNm[i], 'Nm'),
		unit(raw.altitudeM[i], 'm'),
		Number.isNaN(limit) ? 'no size' : `${formats.number(limit)}°`
	];
	// a recording without heights has no line for them
	return READ_OUT_NAMES.map((name, place) => ({ name, value: values[place] })).filter(
		({ name }) => name !== 'Height' || data.heightM !== null
	);
}

/**
 * The read-out in one breath, for who hears it: the time first, then what is known.
 *
 * @param event that lies at this place, by its number in the table; undefined = none
 */
export function spokenReadOut(
	items: readonly ReadOutItem[],
	event: { readonly number: number } | undefined
): string {
	const [time, ...others] = items;
	const known = others
		.filter(({ value }) => value !== 'not known')
		.map(({ name, value }) => `${name} ${value}`);
	const there = event ? [`event ${event.number}, Enter opens it`] : [];
	return [time.value, ...known, ...there].join('; ');
}
