/**
 * What a ride is, whatever file it came from. All times are seconds from the first record; all arrays
 * that belong together have the same length; a missing value is NaN, never 0.
 */

/** One measured quantity on its own clock. Channels of one recorder share one `timeS` by reference. */
export interface Channel {
	/** seconds from the first record, strictly increasing */
	readonly timeS: Float64Array;
	/** values in the unit that the channel's name states; NaN = missing */
	readonly value: Float64Array;
}

/**
 * The unit is in the name. `crankTorqueNm` and `wheelRpm` come from loggers (instantaneous), the others
 * from ride computers (means over about a crank turn or a second).
 */
export const CHANNEL_NAMES = [
	'speedMps',
	'distanceM',
	'cadenceRpm',
	'powerW',
	'altitudeM',
	'temperatureC',
	'latitudeDeg',
	'longitudeDeg',
	'wheelRpm',
	'crankTorqueNm'
] as const;
export type ChannelName = (typeof CHANNEL_NAMES)[number];

/** [start, end] in seconds from the first record, start <= end */
export type Span = readonly [startS: number, endS: number];

/** A lap that a person pressed: something may have been felt. */
export interface RiderMark {
	readonly timeS: number;
}

/** A recorded shift: the gear that is in from here on. Tooth counts are a hint (often not the bike's). */
export interface GearEvent {
	readonly timeS: number;
	/** position of the shifter, 1 = as the device counts; null = not known */
	readonly frontIndex: number | null;
	readonly rearIndex: number | null;
	/** teeth as recorded; null = not known */
	readonly frontTeeth: number | null;
	readonly rearTeeth: number | null;
}

export type SensorKind = 'speed' | 'cadence' | 'speed and cadence' | 'power' | 'shifting' | 'other';

export interface Sensor {
	readonly kind: SensorKind;
	/** what the file calls it, cleaned; never a serial number */
	readonly description: string;
}

/** Where the speed comes from, as far as the file tells. */
export type SpeedSource = 'wheel' | 'position' | 'not known';

export type RideFormat = 'fit' | 'tcx' | 'gpx' | 'logger-csv';

/** Something the reader of this ride must know; not an error. */
export interface RideWarning {
	/** kebab-case, stable */
	readonly code: string;
	/** one plain sentence for the rider */
	readonly sentence: string;
	/** for the engineer: byte offsets, counts */
	readonly detail: string;
}

export interface Ride {
	readonly format: RideFormat;
	/** instant of the first record, milliseconds since 1970 UTC */
	readonly startedAtMs: number;
	/** local time minus UTC in seconds as the device recorded it; null = not recorded */
	readonly localOffsetS: number | null;
	/** last record's time */
	readonly durationS: number;
	readonly channels: { readonly [name in ChannelName]?: Channel };
	/** stretches without records that no pause explains */
	readonly gaps: readonly Span[];
	/** stretches in which the recording was paused (by hand or by the device) */
	readonly pauses: readonly Span[];
	/** the device left out samples that it held for unimportant: steps of 2 s and more are usual */
	readonly irregular: boolean;
	readonly marks: readonly RiderMark[];
	readonly gearEvents: readonly GearEvent[];
	readonly sensors: readonly Sensor[];
	readonly speedSource: SpeedSource;
	/** the device or the rider said that this was ridden indoors on a trainer; null = not said */
	readonly trainer: boolean | null;
	/** the file says that a motor helps; null = not said */
	readonly motorAssisted: boolean | null;
	readonly warnings: readonly RideWarning[];
}

/** Why a file is not taken as a ride. */
export type RefusalCode =
	| 'not-a-ride-file'
	/** a table whose columns a person must name first */
	| 'columns-not-known'
	| 'not-a-bicycle-ride'
	| 'no-records'
	| 'no-clock'
	| 'no-speed'
	| 'no-cadence'
	| 'too-large'
	| 'damaged';

/** Thrown by the decoders; carries a sentence for the rider and a detail for the engineer. */
export class RideRefused extends Error {
	constructor(
		readonly code: RefusalCode,
		/** what happened and what to do, for the rider */
		readonly sentence: string,
		/** for the engineer */
		readonly detail: string
	) {
		super(sentence);
		this.name = 'RideRefused';
	}
}
