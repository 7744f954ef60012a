import { dropImplausible } from './plausible';
import type { RecordedChannel } from './recordedRide';
import type { Channel, ChannelName, RideWarning } from './ride';

/**
 * Channels with clocks of their own, on seconds from the ride's first record and bounded to what a bicycle can do.
 * What was recorded before the first record or after the last one is left out: nothing can be set against it.
 *
 * @param apart as recorded
 * @param startedAtMs instant of the first record
 * @param durationS time of the last record
 * @param warnings what was left out as implausible is told here
 * @returns the channels that hold at least one value
 */
export function channelsApart(
	apart: readonly RecordedChannel[],
	startedAtMs: number,
	durationS: number,
	warnings: RideWarning[]
): { [name in ChannelName]?: Channel } {
	const channels: { [name in ChannelName]?: Channel } = {};
	const implausible: string[] = [];
	for (const { name, atMs, value } of apart) {
		const allS = atMs.map((instant) => (instant - startedAtMs) / 1000);
		const from = allS.findIndex((second) => second >= 0);
		const to = allS.findLastIndex((second) => second <= durationS) + 1;
		if (from === -1 || to <= from) continue;
		const kept = value.slice(from, to);
		const dropped = dropImplausible(name, kept);
		if (dropped > 0) implausible.push(`${name}: ${dropped}`);
		if (kept.some((one) => !Number.isNaN(one))) channels[name] = { timeS: allS.slice(from, to), value: kept };
	}
	if (implausible.length > 0)
		warnings.push({
			code: 'implausible-values',
			sentence: 'Some recorded values cannot be true for a bicycle and were left out.',
			detail: implausible.join(', ')
		});
	return channels;
}
