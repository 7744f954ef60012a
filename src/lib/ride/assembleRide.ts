import { channelsApart } from './channelsApart';
import { clockOrder, type ClockOrder } from './clockOrder';
import { MAX_DURATION_S, READ_LIMITS, type ReadLimits } from './limits';
import { gearEventsWithin, marksWithin, pausesWithin } from './onRideClock';
import { recordingRhythm } from './recordingRhythm';
import type { RecordedRide } from './recordedRide';
import { refusal } from './refusal';
import type { Channel, ChannelName, Ride, RideWarning } from './ride';
import { rideChannels } from './rideChannels';

/**
 * Makes a ride of what a decoder read: one clock, bounded values, marks, shifts and pauses on it.
 * @param recorded records in file order with absolute instants
 * @param limits as many records as may be
 * @returns the ride
 * @throws RideRefused 'no-records', 'no-clock', 'too-large', 'no-speed' or 'no-cadence'
 */
export function assembleRide(recorded: RecordedRide, limits: ReadLimits = READ_LIMITS): Ride {
	if (recorded.atMs.length === 0) throw refusal('no-records', 'no record in the file');
	const bound = recorded.format === 'logger-csv' ? limits.samples : limits.records;
	if (recorded.atMs.length > bound) {
		throw refusal('too-large', `${recorded.atMs.length} records, the bound is ${bound}`);
	}
	const order = clockOrder(recorded.atMs);
	if (order.atMs.length === 0) {
		throw refusal('no-clock', `${recorded.atMs.length} records, none with a usable instant`);
	}
	const startedAtMs = order.atMs[0];
	const timeS = order.atMs.map((atMs) => (atMs - startedAtMs) / 1000);
	const durationS = timeS[timeS.length - 1];
	if (durationS > MAX_DURATION_S) {
		throw refusal('too-large', `${durationS} s long, the bound is ${MAX_DURATION_S} s`);
	}
	const warnings: RideWarning[] = [...recorded.warnings, ...clockWarnings(order)];
	const channels = {
		...rideChannels(recorded, order, timeS, warnings),
		...channelsApart(recorded.apart ?? [], startedAtMs, durationS, warnings)
	};
	requireMotion(channels);
	if (!channels.powerW && !channels.crankTorqueNm) {
		warnings.push({
			code: 'no-power',
			sentence: 'The ride holds no power, so it says much less about slipping and nothing about torque.',
			detail: 'no record with a power value'
		});
	}
	const pauses = pausesWithin(recorded.pausesMs, startedAtMs, durationS);
	return {
		format: recorded.format,
		startedAtMs,
		localOffsetS: recorded.localOffsetS,
		durationS,
		channels,
		...recordingRhythm(timeS, pauses),
		pauses,
		marks: marksWithin(recorded.marksAtMs, startedAtMs, durationS),
		gearEvents: gearEventsWithin(recorded.gearEvents, startedAtMs, durationS),
		sensors: recorded.sensors,
		speedSource: recorded.speedSource,
		trainer: recorded.trainer,
		motorAssisted: recorded.motorAssisted,
		warnings
	};
}

function requireMotion(channels: { readonly [name in ChannelName]?: Channel }): void {
	const moves = (name: ChannelName) => channels[name]?.value.some((value) => value > 0) ?? false;
	if (!moves('speedMps') && !moves('wheelRpm')) throw refusal('no-speed', 'no speed above 0 in any record');
	if (!moves('cadenceRpm')) throw refusal('no-cadence', 'no cadence above 0 in any record');
}

function clockWarnings(order: ClockOrder): RideWarning[] {
	const warnings: RideWarning[] = [];
	const lost = order.withoutClock + order.outOfOrder;
	if (lost > 0) {
		warnings.push({
			code: 'records-out-of-order',
			sentence: 'The clock of the recording jumped or was missing; the points that do not fit were left out.',
			detail: `${order.outOfOrder} records against the clock, ${order.withoutClock} without a time`
		});
	}
	if (order.repeated > 0) {
		warnings.push({
			code: 'repeated-times',
			sentence: 'Some points carry the same time; each such group was read as one point.',
			detail: `${order.repeated} records merged`
		});
	}
	return warnings;
}
