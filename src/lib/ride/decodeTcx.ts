import { assembleRide } from './assembleRide';
import { READ_LIMITS, type ReadLimits } from './limits';
import { MAX_MARKS } from './limits';
import { parseInstant } from './parseInstant';
import { readXml } from './readXml';
import { refusal } from './refusal';
import type { Ride, RideWarning } from './ride';
import { speedFromDistance } from './speedFromDistance';
import { decimal, TrackColumns, type TrackPoint } from './trackColumns';

/** what is gathered while the file streams by */
interface Reading {
	readonly points: TrackColumns;
	readonly sports: string[];
	readonly marksAtMs: number[];
	readonly pausesMs: [number, number][];
	localOffsetS: number | null;
	point: TrackPoint | null;
	/** false inside an activity that is no bicycle ride */
	wanted: boolean;
	/** the last lap ended by hand, and no later lap has begun: known as a mark when one does */
	endedByHand: boolean;
	/** a track of this lap has ended at this instant: the next one begins after a pause */
	trackEndedMs: number;
}

/** elements of a trackpoint and of its extension, by the channel that they fill */
const CHANNELS: Readonly<Record<string, keyof TrackPoint>> = {
	LatitudeDegrees: 'latitudeDeg',
	LongitudeDegrees: 'longitudeDeg',
	AltitudeMeters: 'altitudeM',
	DistanceMeters: 'distanceM',
	Cadence: 'cadenceRpm',
	Speed: 'speedMps',
	Watts: 'powerW'
};

/**
 * Reads a TCX file (Training Center Database v2 with the activity extension v2 for speed and power).
 * @param bytes the file as it was uploaded
 * @returns the ride; of a file that is cut off or broken, what stands before
 * @throws RideRefused when it is no bicycle ride or too little is left
 */
export async function decodeTcx(bytes: Uint8Array, limits: ReadLimits = READ_LIMITS): Promise<Ride> {
	const reading: Reading = {
		points: new TrackColumns(limits.records),
		sports: [],
		marksAtMs: [],
		pausesMs: [],
		localOffsetS: null,
		point: null,
		wanted: false,
		endedByHand: false,
		trackEndedMs: NaN
	};
	const broken = readXml(bytes, {
		open: (path, attributes) => open(reading, path, attributes),
		close: (path, text) => close(reading, path, text)
	});
	requireRide(reading, broken);
	const { atMs, columns } = reading.points.columns();
	const warnings = warningsOf(reading, broken);
	if (columns.distanceM && !columns.speedMps?.some((speed) => !Number.isNaN(speed))) {
		columns.speedMps = speedFromDistance(atMs, columns.distanceM);
		warnings.push({
			code: 'speed-from-distance',
			sentence:
				'The file records no speed; it was taken from the distance and is coarser. FIT files hold more.',
			detail: 'no speed in the extension of any trackpoint'
		});
	}
	return assembleRide(
		{
			format: 'tcx',
			atMs,
			columns,
			marksAtMs: reading.marksAtMs,
			pausesMs: reading.pausesMs,
			gearEvents: [],
			sensors: [],
			localOffsetS: reading.localOffsetS,
			speedSource: 'not known',
			trainer: null,
			motorAssisted: null,
			warnings
		},
		limits
	);
}

function open(reading: Reading, path: readonly string[], attributes: Readonly<Record<string, string>>): void {
	switch (path.at(-1)) {
		case 'Activity':
			reading.sports.push(attributes.Sport ?? 'none');
			reading.wanted = attributes.Sport === undefined || ['Biking', 'Other'].includes(attributes.Sport);
			reading.endedByHand = false;
			break;
		case 'Lap':
			openLap(reading, attributes.StartTime ?? '');
			break;
		case 'Trackpoint':
			reading.point = {};
			break;
	}
}

/** a lap that ended by hand is a mark once another begins: the last one ends with the ride */
function openLap(reading: Reading, startTime: string): void {
	const startMs = parseInstant(startTime)?.atMs ?? reading.points.lastAtMs;
	if (reading.endedByHand && reading.marksAtMs.length < MAX_MARKS) reading.marksAtMs.push(startMs);
	reading.endedByHand = false;
	reading.trackEndedMs = NaN;
}

function close(reading: Reading, path: readonly string[], text: string): void {
	const name = path.at(-1)!;
	const parent = path.at(-2);
	if (name === 'TriggerMethod' && parent === 'Lap') reading.endedByHand = reading.wanted && text === 'Manual';
	if (name === 'Track') reading.trackEndedMs = reading.points.lastAtMs;
	if (!reading.point) return;
	if (name === 'Trackpoint') {
		if (reading.wanted && path.includes('Activity')) addPoint(reading, reading.point);
		reading.point = null;
	} else if (name === 'Time' && parent === 'Trackpoint') {
		const instant = parseInstant(text);
		reading.point.atMs = instant?.atMs;
		reading.localOffsetS ??= instant?.localOffsetS ?? null;
	} else if (Object.hasOwn(CHANNELS, name)) {
		reading.point[CHANNELS[name]] = decimal(text);
	}
}

function addPoint(reading: Reading, point: TrackPoint): void {
	const atMs = point.atMs ?? NaN;
	if (atMs > reading.trackEndedMs && reading.pausesMs.length < MAX_MARKS) {
		reading.pausesMs.push([reading.trackEndedMs, atMs]);
	}
	reading.trackEndedMs = NaN;
	reading.points.add(point);
}

function requireRide(reading: Reading, broken: string | null): void {
	const sports = reading.sports.join(', ');
	if (reading.sports.length === 0) {
		throw refusal(broken === null ? 'not-a-ride-file' : 'damaged', broken ?? 'no activity in the file');
	}
	if (!reading.sports.some((sport) => ['Biking', 'Other', 'none'].includes(sport))) {
		throw refusal('not-a-bicycle-ride', `sport: ${sports}`);
	}
	if (reading.points.length === 0)
		throw refusal(broken === null ? 'no-records' : 'damaged', broken ?? 'no trackpoint');
}

function warningsOf(reading: Reading, broken: string | null): RideWarning[] {
	const warnings: RideWarning[] = [];
	const detail = `sport: ${reading.sports.join(', ')}`;
	if (broken !== null) {
		warnings.push({
			code: 'file-cut-off',
			sentence: 'The file ends too early or is damaged; it was read up to its last whole point.',
			detail: `${broken}; ${reading.points.length} points read`
		});
	}
	if (!reading.sports.includes('Biking')) {
		warnings.push({
			code: 'sport-not-stated',
			sentence: 'The file does not say that this was a bicycle ride; it was taken as one.',
			detail
		});
	}
	if (reading.sports.some((sport) => !['Biking', 'Other', 'none'].includes(sport))) {
		warnings.push({
			code: 'other-sports-left-out',
			sentence: 'The file also holds other sports; only the bicycle ride was read.',
			detail
		});
	}
	return warnings;
}
