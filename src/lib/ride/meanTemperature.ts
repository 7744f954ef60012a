import type { Ride } from './ride';

/** What the device's thermometer said over a ride. */
export interface MeanTemperature {
	/** degrees Celsius, of the device, not of the hub */
	readonly meanC: number;
	/** share of the records that have a value, 0 to 1 */
	readonly recordedShare: number;
}

/** below this share of the records the mean speaks for too little of the ride (no source) */
const LEAST_SHARE = 0.5;

/**
 * Mean temperature that a ride's device recorded. The thermometer sits in the device: sun and the rider's breath warm
 * it, and the hub is colder or warmer. So it tells warm rides from cold ones and nothing finer.
 *
 * @returns null without such a channel, or when fewer than half of its records have a value
 * @example meanTemperature(ride) // { meanC: 11.4, recordedShare: 1 }
 * Source: common practice, no source.
 */
export function meanTemperature({ channels }: Pick<Ride, 'channels'>): MeanTemperature | null {
	const channel = channels.temperatureC;
	if (!channel || channel.value.length === 0) return null;
	let sum = 0;
	let count = 0;
	for (const value of channel.value) {
		if (Number.isNaN(value)) continue;
		sum += value;
		count++;
	}
	const recordedShare = count / channel.value.length;
	return recordedShare >= LEAST_SHARE ? { meanC: sum / count, recordedShare } : null;
}
