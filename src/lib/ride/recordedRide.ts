import type { ChannelName, RideFormat, RideWarning, Sensor, SpeedSource } from './ride';

/**
 * What a decoder hands to `assembleRide`: the records as the file has them, in file order and with
 * absolute instants, before the clock is put in order and the values are bounded.
 */
export interface RecordedRide {
	readonly format: RideFormat;
	/** instant of each record, milliseconds since 1970 UTC; NaN = the record has none */
	readonly atMs: Float64Array;
	/** one value a record, NaN = missing */
	readonly columns: Columns;
	/** channels with clocks of their own, which begin together with that of the records */
	readonly apart?: readonly RecordedChannel[];
	readonly marksAtMs: readonly number[];
	/** [stopped, started again] */
	readonly pausesMs: readonly (readonly [stopMs: number, startMs: number])[];
	readonly gearEvents: readonly RecordedGearEvent[];
	readonly sensors: readonly Sensor[];
	readonly localOffsetS: number | null;
	readonly speedSource: SpeedSource;
	readonly trainer: boolean | null;
	readonly motorAssisted: boolean | null;
	readonly warnings: readonly RideWarning[];
}

export interface RecordedChannel {
	readonly name: ChannelName;
	/** milliseconds since 1970 UTC, rising */
	readonly atMs: Float64Array;
	/** NaN = missing */
	readonly value: Float64Array;
}

export type Columns = { readonly [name in ChannelName]?: Float64Array };

export interface RecordedGearEvent {
	readonly atMs: number;
	readonly frontIndex: number | null;
	readonly rearIndex: number | null;
	readonly frontTeeth: number | null;
	readonly rearTeeth: number | null;
}
