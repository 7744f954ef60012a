import type { ClockOrder } from './clockOrder';
import { continuousDistance } from './continuousDistance';
import { dropImplausible } from './plausible';
import type { RecordedRide } from './recordedRide';
import { CHANNEL_NAMES, type Channel, type ChannelName, type RideWarning } from './ride';

/**
 * The columns of a recording as channels on the ride's clock, bounded to what a bicycle can do.
 * @param recorded the records; implausible values in its columns are replaced in place
 * @param order where each record stands on the clock
 * @param timeS the clock, shared by all channels
 * @param warnings what was left out or added up is told here
 * @returns the channels that hold at least one value
 */
export function rideChannels(
	recorded: RecordedRide,
	order: ClockOrder,
	timeS: Float64Array,
	warnings: RideWarning[]
): { [name in ChannelName]?: Channel } {
	const channels: { [name in ChannelName]?: Channel } = {};
	const implausible: string[] = [];
	for (const name of CHANNEL_NAMES) {
		const column = recorded.columns[name];
		if (!column) continue;
		const dropped = dropImplausible(name, column);
		if (dropped > 0) implausible.push(`${name}: ${dropped}`);
		const value = new Float64Array(timeS.length).fill(NaN);
		let known = 0;
		for (let i = 0; i < column.length; i++) {
			const at = order.place[i];
			if (at < 0 || Number.isNaN(column[i]) || !Number.isNaN(value[at])) continue;
			value[at] = column[i];
			known++;
		}
		if (known > 0) channels[name] = { timeS, value };
	}
	if (channels.distanceM) {
		const { restarts, dropped, beforeM } = continuousDistance(timeS, channels.distanceM.value);
		if (dropped > 0) implausible.push(`distanceM out of line: ${dropped}`);
		if (beforeM > 0) {
			warnings.push({
				code: 'distance-from-before',
				sentence: 'The recorded distance went on from earlier riding; this ride counts from its first point.',
				detail: `${beforeM.toFixed(0)} m taken off`
			});
		}
		if (restarts > 0) {
			warnings.push({
				code: 'distance-restarted',
				sentence: 'The recorded distance began again during the ride; the parts were added up.',
				detail: `${restarts} times`
			});
		}
	}
	keepWholePositions(channels);
	if (implausible.length > 0) {
		warnings.push({
			code: 'implausible-values',
			sentence: 'Some recorded values cannot be true for a bicycle and were left out.',
			detail: implausible.join(', ')
		});
	}
	return channels;
}

/** half a position, or the point 0/0 that devices write before they know better, is none */
function keepWholePositions(channels: { [name in ChannelName]?: Channel }): void {
	const latitude = channels.latitudeDeg?.value;
	const longitude = channels.longitudeDeg?.value;
	let known = 0;
	for (let i = 0; latitude && longitude && i < latitude.length; i++) {
		const whole = !Number.isNaN(latitude[i]) && !Number.isNaN(longitude[i]);
		if (whole && (latitude[i] !== 0 || longitude[i] !== 0)) known++;
		else latitude[i] = longitude[i] = NaN;
	}
	if (known > 0) return;
	delete channels.latitudeDeg;
	delete channels.longitudeDeg;
}
