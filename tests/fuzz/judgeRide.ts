import type { ColumnMapping } from '$lib/ride/columnMapping';
import { decodeRide } from '$lib/ride/decodeRide';
import { READ_LIMITS } from '$lib/ride/limits';
import { PLAUSIBLE } from '$lib/ride/plausible';
import { RideRefused, type ChannelName, type Ride } from '$lib/ride/ride';

/**
 * Reads bytes and holds what comes out against the promises of a ride: values in their bounds, times that rise,
 * marks and spans within it. A refusal with a sentence and a detail is as good.
 *
 * @returns the ride, or null when it was refused
 * @throws Error that says which promise was broken
 */
export async function judgeRide(
	bytes: Uint8Array,
	name = 'ride.fit',
	columns: ColumnMapping | null = null
): Promise<Ride | null> {
	let read: Ride;
	try {
		read = await decodeRide(bytes, name, READ_LIMITS, columns);
	} catch (error) {
		if (error instanceof RideRefused && error.sentence !== '' && error.detail !== '') return null;
		throw error;
	}
	for (const [channelName, channel] of Object.entries(read.channels)) {
		const [low, high] = PLAUSIBLE[channelName as ChannelName];
		if (channel.timeS.length !== channel.value.length) throw new Error(`${channelName}: lengths differ`);
		for (let i = 0; i < channel.timeS.length; i++) {
			if (i > 0 && !(channel.timeS[i] > channel.timeS[i - 1]))
				throw new Error(`${channelName}: time stands still`);
			const value = channel.value[i];
			// distance is a running sum and may grow past what one record may state
			const fits = value >= low && (value <= high || channelName === 'distanceM');
			if (!Number.isNaN(value) && !fits) throw new Error(`${channelName}: ${value}`);
		}
	}
	if (!(read.durationS >= 0) || !Number.isFinite(read.startedAtMs)) throw new Error('no finite clock');
	for (const { timeS } of [...read.marks, ...read.gearEvents]) {
		if (!(timeS >= 0 && timeS <= read.durationS)) throw new Error(`a mark or shift at ${timeS} s`);
	}
	for (const [startS, endS] of [...read.gaps, ...read.pauses]) {
		if (!(startS >= 0 && startS <= endS && endS <= read.durationS))
			throw new Error(`span ${startS} to ${endS}`);
	}
	return read;
}
