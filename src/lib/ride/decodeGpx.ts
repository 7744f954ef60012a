import { assembleRide } from './assembleRide';
import { READ_LIMITS, type ReadLimits } from './limits';
import { distanceFromPosition } from './distanceFromPosition';
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
	readonly types: string[];
	readonly pausesMs: [number, number][];
	localOffsetS: number | null;
	point: TrackPoint | null;
	/** a segment has ended at this instant: the next one begins after a pause */
	segmentEndedMs: number;
}

/** elements of a point and of the extensions in use, by the channel that they fill */
const CHANNELS: Readonly<Record<string, keyof TrackPoint>> = {
	ele: 'altitudeM',
	speed: 'speedMps',
	cad: 'cadenceRpm',
	cadence: 'cadenceRpm',
	power: 'powerW',
	PowerInWatts: 'powerW',
	atemp: 'temperatureC'
};
const BICYCLE = /bik|cycl/i;
const OTHER = /run|walk|hik|swim|ski|row|sail/i;

/**
 * Reads a GPX track (GPX 1.1, 1.0 as well) with cadence, power and speed from extensions. The schema has
 * no wheel speed: without a speed in the extensions it comes from the positions, which shows slips badly.
 * @param bytes the file as it was uploaded
 * @returns the ride; of a file that is cut off or broken, what stands before
 * @throws RideRefused when it is no bicycle ride or too little is left
 */
export async function decodeGpx(bytes: Uint8Array, limits: ReadLimits = READ_LIMITS): Promise<Ride> {
	const reading: Reading = {
		points: new TrackColumns(limits.records),
		types: [],
		pausesMs: [],
		localOffsetS: null,
		point: null,
		segmentEndedMs: NaN
	};
	const broken = readXml(bytes, {
		open: (path, attributes) => {
			if (path.at(-1) !== 'trkpt') return;
			reading.point = {
				latitudeDeg: decimal(attributes.lat ?? ''),
				longitudeDeg: decimal(attributes.lon ?? '')
			};
		},
		close: (path, text) => close(reading, path, text)
	});
	if (reading.points.length === 0) {
		throw refusal(broken === null ? 'no-records' : 'damaged', broken ?? 'no track point in the file');
	}
	const stated = reading.types.join(', ');
	if (reading.types.length > 0 && reading.types.every((type) => OTHER.test(type) && !BICYCLE.test(type))) {
		throw refusal('not-a-bicycle-ride', `type of track: ${stated}`);
	}
	const { atMs, columns } = reading.points.columns();
	const warnings = warningsOf(reading, broken);
	columns.distanceM = distanceFromPosition(columns.latitudeDeg!, columns.longitudeDeg!);
	const hasSpeed = columns.speedMps!.some((speed) => !Number.isNaN(speed));
	if (!hasSpeed) {
		columns.speedMps = speedFromDistance(atMs, columns.distanceM);
		warnings.push({
			code: 'speed-from-position',
			sentence:
				'The file records no speed; it was taken from the positions, which are too coarse for most slips. Upload the FIT file if there is one.',
			detail: 'no speed in the extensions of any point'
		});
	}
	return assembleRide(
		{
			format: 'gpx',
			atMs,
			columns,
			marksAtMs: [],
			pausesMs: reading.pausesMs,
			gearEvents: [],
			sensors: [],
			localOffsetS: reading.localOffsetS,
			speedSource: hasSpeed ? 'not known' : 'position',
			trainer: null,
			motorAssisted: null,
			warnings
		},
		limits
	);
}

function close(reading: Reading, path: readonly string[], text: string): void {
	const name = path.at(-1)!;
	const { point } = reading;
	if (name === 'type' && path.at(-2) === 'trk' && text !== '') reading.types.push(text.slice(0, 40));
	if (name === 'trkseg') reading.segmentEndedMs = reading.points.lastAtMs;
	if (!point) return;
	if (name === 'trkpt') {
		if (point.atMs! > reading.segmentEndedMs && reading.pausesMs.length < MAX_MARKS) {
			reading.pausesMs.push([reading.segmentEndedMs, point.atMs!]);
		}
		reading.segmentEndedMs = NaN;
		reading.points.add(point);
		reading.point = null;
	} else if (name === 'time' && path.at(-2) === 'trkpt') {
		const instant = parseInstant(text);
		point.atMs = instant?.atMs;
		reading.localOffsetS ??= instant?.localOffsetS ?? null;
	} else if (Object.hasOwn(CHANNELS, name)) {
		point[CHANNELS[name]] = decimal(text);
	}
}

function warningsOf(reading: Reading, broken: string | null): RideWarning[] {
	const warnings: RideWarning[] = [];
	if (broken !== null) {
		warnings.push({
			code: 'file-cut-off',
			sentence: 'The file ends too early or is damaged; it was read up to its last whole point.',
			detail: `${broken}; ${reading.points.length} points read`
		});
	}
	if (!reading.types.some((type) => BICYCLE.test(type))) {
		warnings.push({
			code: 'sport-not-stated',
			sentence: 'The file does not say that this was a bicycle ride; it was taken as one.',
			detail: `type of track: ${reading.types.join(', ') || 'none'}`
		});
	}
	return warnings;
}
