import { clockOrder, type ClockOrder } from './clockOrder';
import { continuousDistance } from './continuousDistance';
import { MAX_DURATION_S, MAX_LOGGER_SAMPLES, MAX_RECORDS } from './limits';
import { dropImplausible } from './plausible';
import { recordingRhythm } from './recordingRhythm';
import type { RecordedRide } from './recordedRide';
import { refusal } from './refusal';
import { CHANNEL_NAMES, type Channel, type ChannelName, type GearEvent } from './ride';
import type { Ride, RideWarning, Span } from './ride';

/** a shift or a stop this long before the first record still belongs to the ride, seconds */
const LEAD_IN_S = 60;

/**
 * Makes a ride of what a decoder read: one clock, bounded values, marks, shifts and pauses on it.
 * @param recorded records in file order with absolute instants
 * @returns the ride
 * @throws RideRefused 'no-records', 'no-clock', 'too-large', 'no-speed' or 'no-cadence'
 */
export function assembleRide(recorded: RecordedRide): Ride {
	if (recorded.atMs.length === 0) throw refusal('no-records', 'no record in the file');
	const bound = recorded.format === 'logger-csv' ? MAX_LOGGER_SAMPLES : MAX_RECORDS;
	if (recorded.atMs.length > bound) {
		throw refusal('too-large', `${recorded.atMs.length} records, the bound is ${bound}`);
	}
	const order = clockOrder(recorded.atMs);
	if (order.atMs.length === 0) {
		throw refusal('no-clock', `${recorded.atMs.length} records, none with a usable instant`);
	}
	const startedAtMs = order.atMs[0];
	const toS = (ms: number) => (ms - startedAtMs) / 1000;
	const timeS = order.atMs.map(toS);
	const durationS = timeS[timeS.length - 1];
	if (durationS > MAX_DURATION_S) {
		throw refusal('too-large', `${durationS} s long, the bound is ${MAX_DURATION_S} s`);
	}
	const warnings: RideWarning[] = [...recorded.warnings, ...clockWarnings(order)];
	const channels = readChannels(recorded, order, timeS, warnings);
	requireMotion(channels);
	if (!channels.powerW && !channels.crankTorqueNm) {
		warnings.push({
			code: 'no-power',
			sentence: 'The ride holds no power, so it says much less about slipping and nothing about torque.',
			detail: 'no record with a power value'
		});
	}
	const pauses = spansWithin(recorded.pausesMs, toS, durationS);
	return {
		format: recorded.format,
		startedAtMs,
		localOffsetS: recorded.localOffsetS,
		durationS,
		channels,
		...recordingRhythm(timeS, pauses),
		pauses,
		marks: marksWithin(recorded.marksAtMs, toS, durationS),
		gearEvents: gearEventsWithin(recorded, toS, durationS),
		sensors: recorded.sensors,
		speedSource: recorded.speedSource,
		trainer: recorded.trainer,
		motorAssisted: recorded.motorAssisted,
		warnings
	};
}

function readChannels(
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
		const { restarts, dropped } = continuousDistance(timeS, channels.distanceM.value);
		if (dropped > 0) implausible.push(`distanceM out of line: ${dropped}`);
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

function marksWithin(marksAtMs: readonly number[], toS: (ms: number) => number, durationS: number) {
	const times = new Set<number>();
	for (const ms of marksAtMs) {
		const timeS = toS(ms);
		// a lap at the very start is the device's, nobody has felt anything yet
		if (timeS > 0 && timeS <= durationS + LEAD_IN_S) times.add(Math.min(timeS, durationS));
	}
	return [...times].sort((a, b) => a - b).map((timeS) => ({ timeS }));
}

function spansWithin(
	spansMs: RecordedRide['pausesMs'],
	toS: (ms: number) => number,
	durationS: number
): Span[] {
	const spans: Span[] = [];
	for (const [stopMs, startMs] of spansMs) {
		const startS = Math.max(0, toS(stopMs));
		const endS = Math.min(durationS, toS(startMs));
		if (endS > startS) spans.push([startS, endS]);
	}
	return spans.sort((a, b) => a[0] - b[0]);
}

function gearEventsWithin(
	recorded: RecordedRide,
	toS: (ms: number) => number,
	durationS: number
): GearEvent[] {
	const events: GearEvent[] = [];
	for (const { atMs, ...gear } of recorded.gearEvents) {
		const timeS = toS(atMs);
		if (timeS >= -LEAD_IN_S && timeS <= durationS) events.push({ timeS: Math.max(0, timeS), ...gear });
	}
	return events.sort((a, b) => a.timeS - b.timeS);
}
