import { extent, max } from 'd3';
import { DRIVE_STATES } from '$lib/slip/analysis';
import { laneSums, type LaneSum } from './driveLanes';
import { gainedSinceEngaged } from './gainedSinceEngaged';
import { minMaxLevels, type Levels } from './minMaxLevels';
import type { RideTraces } from './readChannels';

/** states of the drive in which nothing is driven */
export const REST_STATES = new Set(
	(['not observed', 'stopped', 'coasting'] as const).map((state) => DRIVE_STATES.indexOf(state))
);

/** Everything the strips draw, with its min/max levels, and the greatest value of each. */
export interface StripData {
	readonly length: number;
	readonly raw: Readonly<Record<StripName, Float32Array>>;
	readonly levels: Readonly<Record<StripName, Levels>>;
	readonly top: Readonly<Record<StripName, number>>;
	readonly state: Float32Array;
	/** the same as sums, a lane of the ribbon each */
	readonly lanes: readonly LaneSum[];
	/** [lowest, highest] height; null when none was recorded */
	readonly heightM: readonly [number, number] | null;
	readonly distanceM: Float32Array;
	readonly detectionLimitCrankDeg: Float32Array;
	/** null when the recording holds none */
	readonly positions: { readonly latitudeDeg: Float32Array; readonly longitudeDeg: Float32Array } | null;
	/** lines that a logger saw faster, to be asked for by stretches; null = one value a second is all */
	readonly ownRate: OwnRate | null;
}

/** Lines at a rate of their own. */
export interface OwnRate {
	/** seconds from one value to the next */
	readonly sampleS: number;
	readonly names: readonly string[];
}
const STRIP_NAMES = [
	'gained',
	'cadenceRpm',
	'engagedCadenceRpm',
	'speedKmh',
	'powerW',
	'hubTorqueNm',
	'altitudeM'
] as const;
export type StripName = (typeof STRIP_NAMES)[number];

/**
 * Prepares the channels of a ride for drawing, once after loading.
 *
 * @param channels what /rides/ID/channels sent; a trace that is missing is drawn as not known
 */
export function rideStripData(channels: RideTraces): StripData {
	const unknown = new Float32Array(channels.length).fill(NaN);
	const trace = (name: string) => channels.traces[name] ?? unknown;
	const state = trace('state');
	const { latitudeDeg, longitudeDeg } = channels.traces;
	const raw: Record<StripName, Float32Array> = {
		gained: gainedSinceEngaged(trace('gainedHubDeg'), state, REST_STATES, DRIVE_STATES.indexOf('slip')),
		cadenceRpm: trace('cadenceRpm'),
		engagedCadenceRpm: trace('engagedCadenceRpm'),
		speedKmh: trace('speedMps').map((speedMps) => speedMps * 3.6),
		powerW: trace('powerW'),
		hubTorqueNm: trace('hubTorqueNm'),
		altitudeM: trace('altitudeM')
	};
	const [lowest, highest] = extent(raw.altitudeM);
	const each = <T>(make: (values: Float32Array) => T) =>
		Object.fromEntries(STRIP_NAMES.map((name) => [name, make(raw[name])])) as Record<StripName, T>;
	return {
		length: channels.length,
		raw,
		levels: each((values) => minMaxLevels(values)),
		top: each((values) => max(values) ?? 0),
		state,
		lanes: laneSums(state),
		heightM: lowest === undefined || highest === undefined ? null : [lowest, highest],
		distanceM: trace('distanceM'),
		detectionLimitCrankDeg: trace('detectionLimitCrankDeg'),
		positions: latitudeDeg && longitudeDeg ? { latitudeDeg, longitudeDeg } : null,
		ownRate: (channels.facts?.ownRate as OwnRate | null | undefined) ?? null
	};
}
