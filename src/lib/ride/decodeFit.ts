import { assembleRide } from './assembleRide';
import { fitColumns } from './fitColumns';
import { fitDamageWarning } from './fitDamageWarning';
import { fitGearEvents } from './fitGearEvents';
import { fitLocalOffset } from './fitLocalOffset';
import { fitMarks } from './fitMarks';
import type { FitMessages } from './fitMessages';
import type { FitPart } from './fitPart';
import { fitPauses } from './fitPauses';
import { fitRecords } from './fitRecords';
import { fitSensors } from './fitSensors';
import { fitSport, type FitSport } from './fitSport';
import { fitWithoutRecords } from './fitWithoutRecords';
import { MAX_FIT_BYTES, MAX_HANDFUL, READ_LIMITS, type ReadLimits } from './limits';
import { readFitMessages } from './readFitMessages';
import { refusal } from './refusal';
import type { Ride, RideWarning, Sensor, SpeedSource } from './ride';
import { splitFitParts } from './splitFitParts';

interface ReadPart {
	readonly part: FitPart;
	readonly messages: FitMessages;
	readonly sport: FitSport;
}

/**
 * Reads a FIT recording: every file of a chain, and of a damaged one as much as is whole.
 * @param bytes the file as it was uploaded
 * @returns the ride, with warnings that name what was lost
 * @throws RideRefused when it is no bicycle ride or too little is left
 */
export async function decodeFit(bytes: Uint8Array, limits: ReadLimits = READ_LIMITS): Promise<Ride> {
	if (bytes.length > MAX_FIT_BYTES) {
		throw refusal('too-large', `${bytes.length} bytes, the bound is ${MAX_FIT_BYTES}`);
	}
	const { parts, trailingBytes } = splitFitParts(bytes);
	const records = parts.reduce((sum, part) => sum + part.records, 0);
	if (records > limits.records)
		throw refusal('too-large', `${records} records, the bound is ${limits.records}`);
	if (records === 0) refuseWithoutRecords(parts);

	const warnings: RideWarning[] = [];
	const read: ReadPart[] = [];
	for (const part of parts) {
		if (part.records === 0) continue;
		const messages = await messagesOf(bytes, part);
		read.push({ part, messages, sport: fitSport(messages) });
	}
	requireRideFile(read);
	const ridden = read.filter(({ sport }) => sport.kind !== 'other');
	if (ridden.length === 0) {
		throw refusal('not-a-bicycle-ride', `sport: ${read.map(({ sport }) => sport.stated).join(', ')}`);
	}
	if (trailingBytes > 0) {
		warnings.push({
			code: 'trailing-bytes',
			sentence: 'After the recording the file goes on with something else, which was left out.',
			detail: `${trailingBytes} bytes after the last part`
		});
	}
	return assembleFit(bytes, read, ridden, warnings, limits);
}

function refuseWithoutRecords(parts: readonly FitPart[]): never {
	const seen = parts.reduce((sum, part) => sum + part.messages, 0);
	const damage = parts.flatMap((part) => (part.damage ? [part.damage.detail] : []));
	const code = damage.length > 0 ? 'damaged' : 'no-records';
	throw refusal(code, [`${parts.length} part(s), ${seen} messages, no record`, ...damage].join('; '));
}

async function messagesOf(bytes: Uint8Array, part: FitPart): Promise<FitMessages> {
	try {
		return await readFitMessages(fitWithoutRecords(bytes, part));
	} catch (error) {
		throw refusal('damaged', `part at byte ${part.start}: ${(error as Error).message}`);
	}
}

/** routes and plans come as FIT files with records, too */
function requireRideFile(read: readonly ReadPart[]): void {
	const types = read.flatMap(({ messages }) =>
		messages.fileIds.slice(0, MAX_HANDFUL).map((fileId) => fileId.type)
	);
	const planned = ['course', 'workout', 'segment', 'settings', 'sport'];
	const named = types.filter((type) => typeof type === 'string');
	if (named.length > 0 && named.every((type) => planned.includes(type as string))) {
		throw refusal('not-a-ride-file', `FIT file of type ${named.join(', ')}`);
	}
}

function assembleFit(
	bytes: Uint8Array,
	read: readonly ReadPart[],
	ridden: readonly ReadPart[],
	warnings: RideWarning[],
	limits: ReadLimits
): Ride {
	const all = <T>(of: (messages: FitMessages) => readonly T[]) =>
		ridden.flatMap(({ messages }) => of(messages));
	const otherSpansMs = ridden.flatMap(({ sport }) => sport.otherSpansMs);
	const records = fitRecords(
		bytes,
		ridden.map(({ part }) => part)
	);
	const { atMs } = records;
	const columns = fitColumns(records);
	const left = leaveOut(atMs, otherSpansMs);
	for (const { part } of read) {
		if (part.damage) warnings.push(fitDamageWarning(part, part.damage, medianStepS(atMs)));
	}
	warnings.push(...sportWarnings(read, ridden, left));
	const events = all((messages) => messages.events);
	const sensors = fitSensors(all((messages) => messages.devices));
	const hasPosition = columns.latitudeDeg?.some((degrees) => !Number.isNaN(degrees)) ?? false;
	return assembleRide(
		{
			format: 'fit',
			atMs,
			columns,
			marksAtMs: fitMarks(
				all((messages) => messages.laps),
				events
			),
			pausesMs: fitPauses(events),
			gearEvents: fitGearEvents(events),
			sensors,
			localOffsetS: fitLocalOffset(all((messages) => messages.activities)),
			speedSource: speedSourceOf(sensors, hasPosition),
			trainer: trainerOf(ridden, sensors, hasPosition),
			motorAssisted: motorOf(ridden, sensors),
			warnings
		},
		limits
	);
}

/** takes the clock from records of another sport, so that they fall out; returns how many */
function leaveOut(atMs: Float64Array, spansMs: FitSport['otherSpansMs']): number {
	let left = 0;
	for (let i = 0; i < atMs.length && spansMs.length > 0; i++) {
		if (!spansMs.some(([fromMs, toMs]) => atMs[i] >= fromMs && atMs[i] < toMs)) continue;
		atMs[i] = NaN;
		left++;
	}
	return left;
}

function medianStepS(atMs: Float64Array): number {
	const steps = atMs.subarray(1).map((at, i) => (at - atMs[i]) / 1000);
	const forward = steps.filter((step) => step > 0).sort();
	return forward.length > 0 ? forward[forward.length >> 1] : 0;
}

function sportWarnings(read: readonly ReadPart[], ridden: readonly ReadPart[], left: number): RideWarning[] {
	const warnings: RideWarning[] = [];
	const stated = read.map(({ sport }) => sport.stated || 'none').join(', ');
	if (ridden.every(({ sport }) => sport.kind === 'not stated')) {
		warnings.push({
			code: 'sport-not-stated',
			sentence: 'The file does not say that this was a bicycle ride; it was taken as one.',
			detail: `sport: ${stated}`
		});
	}
	if (left > 0 || ridden.length < read.length) {
		warnings.push({
			code: 'other-sports-left-out',
			sentence: 'The file also holds other sports; only the bicycle ride was read.',
			detail: `sport: ${stated}; ${left} records left out`
		});
	}
	if (ridden.length > 1) {
		warnings.push({
			code: 'several-parts',
			sentence: 'The file holds several recordings one after the other; they were read as one ride.',
			detail: `${ridden.length} parts with ${ridden.map(({ part }) => part.records).join(', ')} records`
		});
	}
	return warnings;
}

function speedSourceOf(sensors: readonly Sensor[], hasPosition: boolean): SpeedSource {
	if (sensors.some(({ kind }) => kind === 'speed' || kind === 'speed and cadence')) return 'wheel';
	return sensors.length > 0 && hasPosition ? 'position' : 'not known';
}

function trainerOf(
	ridden: readonly ReadPart[],
	sensors: readonly Sensor[],
	hasPosition: boolean
): boolean | null {
	const said = ridden.map(({ sport }) => sport.trainer);
	if (said.includes(true)) return true;
	const paired = sensors.some(({ description }) => /^(fitness equipment|bike trainer)$/.test(description));
	if (paired && !hasPosition) return true;
	return said.includes(false) ? false : null;
}

function motorOf(ridden: readonly ReadPart[], sensors: readonly Sensor[]): boolean | null {
	const said = ridden.some(({ sport }) => sport.motorAssisted === true);
	const paired = sensors.some(({ description }) => description === 'light electric vehicle');
	return said || paired ? true : null;
}
