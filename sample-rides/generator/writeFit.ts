import { FitBaseType, FitEncoder, type FitEncoderField } from 'fit-file-parser/encoder';
import type { GearEvent, Ride, SensorKind } from '../../src/lib/ride/ride';

/** Global message numbers, events and enumerations of the FIT profile that are used here. */
const MESSAGE = { fileId: 0, session: 18, lap: 19, record: 20, event: 21, deviceInfo: 23, activity: 34 };
const EVENT = { timer: 0, session: 8, lap: 9, activity: 26, frontShift: 42, rearShift: 43 };
const EVENT_TYPE = { start: 0, stop: 1, marker: 3, stopAll: 4 };
const LAP_TRIGGER = { manual: 0, sessionEnd: 7 };
const SPORT_CYCLING = 2;
const SUB_SPORT = { indoorCycling: 6, gravelCycling: 46 };
/** manufacturer number that the profile keeps for development */
const MANUFACTURER = 255;
const DEVICE_TYPE: Readonly<Partial<Record<SensorKind, number>>> = {
	power: 11,
	shifting: 34,
	'speed and cadence': 121,
	cadence: 122,
	speed: 123
};
const FIT_EPOCH_S = 631065600;
const SEMICIRCLES_PER_DEG = 2 ** 31 / 180;

/**
 * Writes a simulated ride as a FIT activity file.
 *
 * @param ride as `simulateRide` gives it: one clock for all channels
 * @returns the file's bytes; the same ride gives the same bytes
 */
export function writeFit(ride: Ride): Uint8Array {
	const encoder = new FitEncoder({ protocolVersion: 0x20 });
	const startS = Math.round(ride.startedAtMs / 1000) - FIT_EPOCH_S;
	encoder.writeMessage(MESSAGE.fileId, [
		u8(0, 4, FitBaseType.Enum),
		u16(1, MANUFACTURER),
		u16(2, 1),
		u32(4, startS)
	]);
	writeSensors(encoder, ride, startS);
	writeTimer(encoder, startS, EVENT_TYPE.start);
	const records = prepareRecords(ride);
	for (const { timeS, write } of inOrder(ride, records)) write(encoder, startS + timeS);
	writeEnd(encoder, ride, startS, records);
	return encoder.close();
}

interface Timed {
	readonly timeS: number;
	readonly rank: number;
	readonly write: (encoder: FitEncoder, atS: number) => void;
}

/** Records, shifts, laps and pauses by time; at the same second a shift comes first, a lap last. */
function inOrder(ride: Ride, records: Timed[]): Timed[] {
	const timed = [...records];
	for (const shift of ride.gearEvents) {
		const before = ride.gearEvents[ride.gearEvents.indexOf(shift) - 1];
		timed.push({ timeS: shift.timeS, rank: 0, write: (e, atS) => writeShift(e, atS, shift, before) });
	}
	for (const [from, to] of ride.pauses) {
		timed.push({ timeS: from, rank: 2, write: (e, atS) => writeTimer(e, atS, EVENT_TYPE.stopAll) });
		timed.push({ timeS: to, rank: 0, write: (e, atS) => writeTimer(e, atS, EVENT_TYPE.start) });
	}
	let lapFromS = 0;
	for (const mark of ride.marks) {
		const from = lapFromS;
		lapFromS = mark.timeS;
		timed.push({
			timeS: mark.timeS,
			rank: 3,
			write: (e, atS) =>
				writeLap(e, atS - mark.timeS + from, atS, distanceBetween(ride, from, mark.timeS), LAP_TRIGGER.manual)
		});
	}
	return timed.sort((a, b) => a.timeS - b.timeS || a.rank - b.rank);
}

function prepareRecords(ride: Ride): Timed[] {
	const { channels } = ride;
	const timeS = Object.values(channels)[0]?.timeS ?? new Float64Array();
	return Array.from(timeS, (t, i) => ({
		timeS: t,
		rank: 1,
		write: (encoder: FitEncoder, atS: number) => {
			const fields: FitEncoderField[] = [u32(253, atS)];
			const add = (name: keyof typeof channels, field: (value: number) => FitEncoderField) => {
				const channel = channels[name];
				if (channel) fields.push(field(channel.value[i]));
			};
			add('latitudeDeg', (deg) => s32(0, deg * SEMICIRCLES_PER_DEG));
			add('longitudeDeg', (deg) => s32(1, deg * SEMICIRCLES_PER_DEG));
			add('altitudeM', (m) => u16(2, (m + 500) * 5));
			add('cadenceRpm', (rpm) => u8(4, rpm));
			add('distanceM', (m) => u32(5, m * 100));
			add('speedMps', (mps) => u16(6, mps * 1000));
			add('powerW', (watts) => u16(7, watts));
			add('temperatureC', (deg) => ({
				number: 13,
				size: 1,
				baseType: FitBaseType.Sint8,
				value: orInvalid(deg, 0x7f)
			}));
			encoder.writeMessage(MESSAGE.record, fields, 0);
		}
	}));
}

function writeSensors(encoder: FitEncoder, ride: Ride, startS: number): void {
	ride.sensors.forEach((sensor, i) => {
		const type = DEVICE_TYPE[sensor.kind];
		if (type === undefined) return;
		encoder.writeMessage(
			MESSAGE.deviceInfo,
			[u32(253, startS), u8(0, i + 1), u8(1, type), u16(2, MANUFACTURER), u8(25, 1, FitBaseType.Enum)],
			1
		);
	});
}

function writeTimer(encoder: FitEncoder, atS: number, type: number): void {
	writeEvent(encoder, atS, EVENT.timer, type, 0);
}

function writeShift(encoder: FitEncoder, atS: number, shift: GearEvent, before: GearEvent | undefined): void {
	const byte = (value: number | null) => value ?? 255;
	const data =
		byte(shift.rearIndex) +
		byte(shift.rearTeeth) * 2 ** 8 +
		byte(shift.frontIndex) * 2 ** 16 +
		byte(shift.frontTeeth) * 2 ** 24;
	const front = before !== undefined && before.frontIndex !== shift.frontIndex;
	writeEvent(encoder, atS, front ? EVENT.frontShift : EVENT.rearShift, EVENT_TYPE.marker, data);
}

function writeEvent(encoder: FitEncoder, atS: number, event: number, type: number, data: number): void {
	encoder.writeMessage(
		MESSAGE.event,
		[u32(253, atS), u8(0, event, FitBaseType.Enum), u8(1, type, FitBaseType.Enum), u32(3, data)],
		2
	);
}

function writeLap(encoder: FitEncoder, fromS: number, toS: number, distanceM: number, trigger: number): void {
	encoder.writeMessage(
		MESSAGE.lap,
		[
			u32(253, toS),
			u32(2, fromS),
			u32(7, (toS - fromS) * 1000),
			u32(8, (toS - fromS) * 1000),
			u32(9, distanceM * 100),
			u8(0, EVENT.lap, FitBaseType.Enum),
			u8(1, EVENT_TYPE.stop, FitBaseType.Enum),
			u8(24, trigger, FitBaseType.Enum)
		],
		3
	);
}

function writeEnd(encoder: FitEncoder, ride: Ride, startS: number, records: readonly Timed[]): void {
	const lastS = records[records.length - 1].timeS;
	const endS = startS + lastS;
	const lapFrom = ride.marks[ride.marks.length - 1]?.timeS ?? 0;
	const movingS = ride.pauses.reduce((rest, [from, to]) => rest - (to - from), lastS);
	writeTimer(encoder, endS, EVENT_TYPE.stopAll);
	writeLap(encoder, startS + lapFrom, endS, distanceBetween(ride, lapFrom, lastS), LAP_TRIGGER.sessionEnd);
	encoder.writeMessage(
		MESSAGE.session,
		[
			u32(253, endS),
			u32(2, startS),
			u32(7, lastS * 1000),
			u32(8, movingS * 1000),
			u32(9, distanceBetween(ride, 0, lastS) * 100),
			u16(26, ride.marks.length + 1),
			u8(0, EVENT.session, FitBaseType.Enum),
			u8(1, EVENT_TYPE.stop, FitBaseType.Enum),
			u8(5, SPORT_CYCLING, FitBaseType.Enum),
			u8(6, ride.trainer ? SUB_SPORT.indoorCycling : SUB_SPORT.gravelCycling, FitBaseType.Enum)
		],
		4
	);
	encoder.writeMessage(
		MESSAGE.activity,
		[
			u32(253, endS),
			u32(0, movingS * 1000),
			u16(1, 1),
			u8(2, 0, FitBaseType.Enum),
			u8(3, EVENT.activity, FitBaseType.Enum),
			u8(4, EVENT_TYPE.stop, FitBaseType.Enum),
			u32(5, endS + (ride.localOffsetS ?? 0))
		],
		5
	);
}

function distanceBetween(ride: Ride, fromS: number, toS: number): number {
	const channel = ride.channels.distanceM;
	if (!channel) return 0;
	const at = (t: number) => {
		let i = channel.timeS.findIndex((x) => x > t) - 1;
		if (i < 0) i = channel.timeS.length - 1;
		return channel.value[i];
	};
	return Math.max(0, at(toS) - at(fromS));
}

const orInvalid = (value: number, invalid: number) => (Number.isNaN(value) ? invalid : Math.round(value));
const u8 = (number: number, value: number, baseType = FitBaseType.Uint8): FitEncoderField => ({
	number,
	size: 1,
	baseType,
	value: orInvalid(value, 0xff)
});
const u16 = (number: number, value: number): FitEncoderField => ({
	number,
	size: 2,
	baseType: FitBaseType.Uint16,
	value: orInvalid(value, 0xffff)
});
const u32 = (number: number, value: number): FitEncoderField => ({
	number,
	size: 4,
	baseType: FitBaseType.Uint32,
	value: orInvalid(value, 0xffffffff)
});
const s32 = (number: number, value: number): FitEncoderField => ({
	number,
	size: 4,
	baseType: FitBaseType.Sint32,
	value: orInvalid(value, 0x7fffffff)
});
