import type { Channel } from '$lib/ride/ride';

/**
 * Means of a channel over whole seconds (a 1 Hz recording has one value in each).
 *
 * @param channel any channel, or none
 * @param seconds length of the ride in whole seconds
 * @returns one value a second; NaN where there is none
 */
export function toSeconds(channel: Channel | undefined, seconds: number): Float64Array {
	const sum = new Float64Array(seconds);
	const count = new Float64Array(seconds);
	if (channel) {
		const { timeS, value } = channel;
		for (let i = 0; i < timeS.length; i++) {
			const second = Math.floor(timeS[i] + 1e-6);
			if (second < 0 || second >= seconds || Number.isNaN(value[i])) continue;
			sum[second] += value[i];
			count[second]++;
		}
	}
	for (let second = 0; second < seconds; second++) sum[second] /= count[second];
	return sum;
}
