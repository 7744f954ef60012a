import type { Random } from '../../../sample-rides/generator/random';
import type { ChannelName, Ride } from '../../../src/lib/ride/ride';

/**
 * The same ride from a device that leaves out records in which little changes: one is stored when cadence, speed or
 * power has moved by enough since the last one, or after some seconds in any case.
 */
export function thinRecords(ride: Ride, chance: Random): Ride {
	const rpm = ride.channels.cadenceRpm!;
	const mps = ride.channels.speedMps!;
	const watts = ride.channels.powerW;
	const movesRpm = chance.between(2.5, 5);
	const movesMps = chance.between(0.1, 0.3);
	const movesShare = chance.between(0.25, 0.6);
	const longestS = 4 + Math.floor(chance.between(0, 4));
	const kept: number[] = [0];
	for (let i = 1; i < rpm.timeS.length; i++) {
		const last = kept[kept.length - 1];
		const moved =
			Math.abs(rpm.value[i] - rpm.value[last]) >= movesRpm ||
			Math.abs(mps.value[i] - mps.value[last]) >= movesMps ||
			(watts && Math.abs(watts.value[i] - watts.value[last]) >= movesShare * Math.max(60, watts.value[last]));
		if (moved || rpm.timeS[i] - rpm.timeS[last] >= longestS) kept.push(i);
	}
	const timeS = Float64Array.from(kept, (i) => rpm.timeS[i]);
	const channels: { [name in ChannelName]?: { timeS: Float64Array; value: Float64Array } } = {};
	for (const [name, channel] of Object.entries(ride.channels)) {
		if (!channel || channel.timeS.length !== rpm.timeS.length) continue;
		channels[name as ChannelName] = { timeS, value: Float64Array.from(kept, (i) => channel.value[i]) };
	}
	return { ...ride, channels, irregular: true };
}
