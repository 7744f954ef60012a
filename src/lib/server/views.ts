/**
 * What the server's functions hand to pages: plain data, ready to render. Pages do no arithmetic.
 * Instants are ISO 8601 in UTC; distances in metres; `…PerHundredKm` per 100 observed km.
 */
import type { EventKind } from '$lib/slip/analysis';
import type { RideWarning } from '$lib/ride/ride';
import type { RiderMarkCounts } from '$lib/slip/riderMarkCounts';
import type { IncidentCounts } from './hardware/incidentsView';
import type { FeltSlipView } from './marks/feltSlips';

export type Instant = string;

export interface PersonView {
	id: number;
	name: string;
	/** what stands for the person everywhere else, e.g. "R2" */
	code: string;
	role: 'owner' | 'engineer' | 'rider';
}

/** A rate with its exact Poisson limits. */
export interface RateView {
	count: number;
	observedM: number;
	ratePerHundredKm: number | null;
	lowerPerHundredKm: number;
	/** null while nothing was observed: no bound can be given */
	upperPerHundredKm: number | null;
	/** two-sided confidence of the limits, e.g. 0.95 */
	confidence: number;
}

/** A rate with THE interval: the wider one of exact limits and those that allow for bursts in a ride. */
export interface WidestRateView extends RateView {
	rides: number;
	/** slips come singly, in bursts within rides, or scatter between rides: what set the upper limit */
	decidedBy: 'single' | 'bursts' | 'scatter';
	/** variance of the rides' counts / their mean, as used */
	dispersion: number;
	/** too few slips to see whether they cluster, and nothing was borrowed */
	assumesSingleEvents: boolean;
	/** the build whose dispersion was taken for this one; null = its own */
	borrowedFrom: string | null;
}

/** How the events of a build stand: the rate counts slips of the reference size on observed stretches. */
export interface CountView {
	confirmed: number;
	unreviewed: number;
	rejected: number;
	/** events not in the rate: smaller, on unobserved stretches, or of another kind */
	apart: number;
	/** only confirmed events count */
	bestCase: WidestRateView;
	/** confirmed and unreviewed events count */
	worstCase: WidestRateView;
}

export interface BuildRow {
	id: number;
	name: string;
	description: string;
	state: 'draft' | 'bench-checked' | 'in test' | 'released' | 'withdrawn';
	wheels: { id: number; name: string }[];
	rides: number;
	totalM: number;
	observedM: number;
	drivenM: number;
	counted: CountView;
	/** reported without a ride file; beside the rate, never in it */
	incidents: IncidentCounts;
	example: boolean;
}

export interface RideRow {
	id: number;
	startedAt: Instant;
	/** local time of the ride as recorded, minutes from UTC; null = not recorded (use the workshop's zone) */
	localOffsetMin: number | null;
	durationS: number;
	totalM: number;
	observedM: number;
	fileName: string;
	wheel: { id: number; name: string } | null;
	build: { id: number; name: string } | null;
	rider: { id: number; code: string } | null;
	events: number;
	unreviewed: number;
	/** what a person must still answer, sentences; empty when nothing */
	needs: string[];
	/** laps that mean slips, have no event and are not answered; they do not hold the ride back */
	openMarks: number;
	/** slips that were felt, about when, without a lap */
	feltSlips: number;
	state: 'counted' | 'needs an answer' | 'left out' | 'withdrawn';
	/** why it is left out or withdrawn */
	stateReason: string | null;
	example: boolean;
}

export interface VerdictView {
	/** sent back with the next decision, so that nobody replaces a verdict unseen */
	id: number;
	verdict: 'confirmed' | 'rejected';
	reason: RejectReason | null;
	note: string;
	by: string;
	at: Instant;
}
export const REJECT_REASONS = ['shift', 'chain', 'sensor', 'surface', 'other'] as const;
export type RejectReason = (typeof REJECT_REASONS)[number];

export interface EventView {
	id: number;
	startS: number;
	endS: number;
	startedAt: Instant;
	kind: EventKind;
	overrunCrankDeg: { value: number; lower: number; upper: number };
	overrunHubDeg: number;
	gear: string | null;
	hubTorqueNm: { value: number; lower: number; upper: number } | null;
	powerLost: number | null;
	strength: number;
	observed: boolean;
	/** metres from the start of the ride */
	atM: number;
	/** metres of the wheel since the build was fitted; null while no build is known */
	buildDistanceM: number | null;
	reasons: string[];
	verdict: VerdictView | null;
}

export const MARK_ANSWERS = ['a slip was felt', 'something else'] as const;
export type MarkAnswer = (typeof MARK_ANSWERS)[number];

/** A lap that the rider pressed. */
export interface RiderMarkView {
	timeS: number;
	/** a slip just before it would have been seen */
	observed: boolean;
	/** the event that it is taken to mean, with the seconds from its onset; null = none */
	event: { id: number; delayS: number } | null;
	answer: { answer: MarkAnswer; by: string; at: Instant } | null;
}

export interface RiderMarksView {
	/** the rider's word: a lap was pressed when a slip was felt; null = not said */
	lapsMeanSlips: boolean | null;
	marks: RiderMarkView[];
	/** laps without event and answer; 0 while laps do not mean slips */
	open: number;
	/** null while laps do not mean slips */
	counts: RiderMarkCounts | null;
}

export interface RideView extends RideRow {
	analysisVersion: number;
	drivenM: number;
	/** the one line at the top: what this ride could and could not show */
	summary: string;
	warnings: RideWarning[];
	gears: { label: string; ratio: number; developmentM: number; seconds: number }[];
	events: number;
	eventList: EventView[];
	marksS: number[];
	/** as the recording names them, "46/22" in teeth or "no. 2/4" in positions; empty = it names none */
	shifts: { timeS: number; gear: string }[];
	riderMarks: RiderMarksView;
	/** slips that were felt, about when, without a lap */
	felt: FeltSlipView[];
	gaps: [number, number][];
	pauses: [number, number][];
	observedStretches: { startS: number; endS: number; startM: number; endM: number }[];
	trainer: boolean | null;
	wet: boolean | null;
	sourceSha256: string;
	/** a ride that looks like the same recording exported with other bytes */
	twinOf: { id: number; fileName: string } | null;
	/** hub degrees of one step, when the build says so */
	stepHubDeg: number | null;
}

export type ImportStage =
	| 'receiving'
	| 'waiting'
	| 'analysing'
	| 'done'
	| 'refused'
	| 'already in the ledger'
	| 'failed'
	/** kept, and waits for an answer */
	| 'asks'
	| 'unpacking'
	| 'unpacked'
	/** of an archive: no ride by its name and bytes */
	| 'left out';

export interface ImportView {
	id: number;
	fileName: string;
	bytes: number;
	stage: ImportStage;
	/** still "receiving", but nothing came for a minute */
	brokeOff: boolean;
	rideId: number | null;
	/** refused or failed: a sentence for the rider and a detail for the engineer; of an archive what came of it */
	sentence: string | null;
	detail: string | null;
	isArchive: boolean;
	/** the archive that it came in, and its folder there */
	archiveId: number | null;
	folder: string | null;
	at: Instant;
}

/** Files that came: what is under way or wants somebody, one by one; what went well, in numbers. */
export interface ImportOverview {
	/** under way just now, refused, failed, broken off or asking: the newest first */
	lines: ImportView[];
	/** further ones of that kind that are not shown */
	more: number;
	/** the newest that went well */
	settled: ImportView[];
	/** waiting and being read, received and unpacked; what broke off is none of them */
	underWay: { waiting: number; reading: number; receiving: number; unpacking: number };
	/** of the last 24 hours */
	lately: { rides: number; known: number; leftOut: number; refused: number };
}

export interface WheelRow {
	id: number;
	name: string;
	hub: string;
	circumferenceM: number | null;
	/** a reference wheel that does not slip: what is found on it are false alarms */
	knownGood: boolean;
	currentBuild: { id: number; name: string } | null;
	totalM: number;
	rides: number;
	example: boolean;
}

export interface FittedPeriodView {
	id: number;
	build: { id: number; name: string };
	from: Instant;
	/** null = still fitted */
	until: Instant | null;
	totalM: number;
	rides: number;
	/** sent back with a correction, so that nobody replaces one unseen */
	version: number;
}

export interface WheelView extends WheelRow {
	periods: FittedPeriodView[];
	rideList: RideRow[];
}

/** One build's step line: counted slips against the wheel's distance since fitting. */
export interface AgeLine {
	buildId: number;
	build: string;
	wheel: string;
	wheelId: number;
	/** each ride as a window on the age axis, in order; also rides that only add to the distance */
	rides: { rideId: number; fromM: number; toM: number }[];
	/** stretches of age that could have shown a reference slip */
	observed: { fromM: number; toM: number }[];
	/** how long they are together */
	observedM: number;
	/** counted slips in order of age; `count` after this one */
	slips: { atM: number; count: number; eventId: number; rideId: number; confirmed: boolean }[];
	endM: number;
}

/** what is drawn of a line: the windows of thousands of rides would be most of a page */
export type DrawnLine = Omit<AgeLine, 'rides'>;

export interface ComparisonView {
	builds: BuildRow[];
	lines: AgeLine[];
}
