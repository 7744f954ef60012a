import type { Bike, Gear } from '$lib/drivetrain/bike';
import type { RideLearning } from '$lib/drivetrain/rideLearning';
import type { ColumnMapping } from '$lib/ride/columnMapping';
import type { ReadLimits } from '$lib/ride/limits';
import type { MeanTemperature } from '$lib/ride/meanTemperature';
import type { RecordingKind } from '$lib/ride/recordingKind';
import type { GearEvent, RideFormat, RideWarning, Sensor, Span } from '$lib/ride/ride';
import type { ObservedStretch, SlipEvent } from '$lib/slip/analysis';
import type { RideExposure } from '$lib/slip/exposure';
import type { InsertionResult } from '$lib/slip/insertionTest';

/** A file to be worked on and what is known of the bike. */
export interface FileToRead {
	/** absolute path of the source in the store */
	readonly path: string;
	/** for messages only */
	readonly fileName: string;
	readonly bike: Bike;
	readonly limits: ReadLimits;
	/** of a logger's table, where a person has named them */
	readonly columns: ColumnMapping | null;
}

/** What the server asks of the child process: one file at a time. */
export interface AnalyseRequest extends FileToRead {
	readonly requestId: number;
	readonly kind: 'analyse';
}

/** A ride that stands is read again to put slips into it. */
export interface InsertRequest extends FileToRead {
	readonly requestId: number;
	readonly kind: 'insert slips';
	readonly seed: number;
}

export type ChildRequest = AnalyseRequest | InsertRequest;

/** A piece of one channel at one level, deflated. */
export interface PackedChunk {
	/** 0 = every value; 1, 2 ... = extremes of each 16, 256 ... values */
	readonly level: number;
	readonly side: 'value' | 'min' | 'max';
	readonly chunk: number;
	/** values in it */
	readonly count: number;
	readonly packed: Uint8Array;
}

/** One trace. */
export interface PackedChannel {
	readonly name: string;
	/** seconds from one value to the next; left out: one */
	readonly sampleS?: number;
	readonly length: number;
	readonly step: number;
	readonly chunks: readonly PackedChunk[];
}

/** What is shown with a result but never counted. */
export interface ResultDetail {
	readonly gears: readonly Gear[];
	readonly warnings: readonly RideWarning[];
	readonly sensors: readonly Sensor[];
	readonly marksS: readonly number[];
	/** as recorded: a hint at the gear, a second or more before the chain moves; older programs kept none */
	readonly shifts?: readonly GearEvent[];
	readonly gaps: readonly Span[];
	readonly pauses: readonly Span[];
	/** what the analysis was told of the bike; results of older programs do not say it: nothing */
	readonly bike?: Bike;
	/** of a logger's table: by which columns it was read; results of older programs do not say it */
	readonly columns?: ColumnMapping;
	/** what the ride tells of its bike and sensors; results of older programs have none */
	readonly learning?: RideLearning;
	/** of the device; null = hardly recorded; results of older programs do not say it */
	readonly temperature?: MeanTemperature | null;
}

/** Everything that the ledger keeps of one file. */
export interface AnalysedFile {
	readonly format: RideFormat;
	readonly startedAtMs: number;
	readonly localOffsetS: number | null;
	readonly durationS: number;
	readonly trainer: boolean | null;
	readonly motorAssisted: boolean | null;
	readonly signature: Uint8Array;
	readonly analysisVersion: number;
	readonly totalM: number;
	readonly observedM: number;
	readonly drivenM: number;
	readonly observed: readonly ObservedStretch[];
	readonly events: readonly SlipEvent[];
	readonly exposure: RideExposure;
	readonly recording: RecordingKind;
	readonly detail: ResultDetail;
	readonly channels: readonly PackedChannel[];
}

/** Why a file is not taken: the rider's sentence and the engineer's detail. */
export interface FileRefusal {
	readonly code: string;
	readonly sentence: string;
	readonly detail: string;
}

export type AnalyseAnswer =
	| { readonly requestId: number; readonly kind: 'analysed'; readonly file: AnalysedFile }
	| { readonly requestId: number; readonly kind: 'inserted'; readonly result: InsertionResult }
	| { readonly requestId: number; readonly kind: 'refused'; readonly refusal: FileRefusal }
	/** a fault of the program or the machine, not of the file */
	| { readonly requestId: number; readonly kind: 'broke'; readonly detail: string };
