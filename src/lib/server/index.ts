/** What pages, endpoints, terminal commands and the start script may use of the server's room. */
import type { Actor } from './actor';
import type {
	BuildRow,
	ComparisonView,
	ImportView,
	Instant,
	PersonView,
	RejectReason,
	RideRow,
	RideView,
	WheelRow,
	WheelView
} from './views';

export type { Actor, Role } from './actor';
export { LedgerRefusal, type LedgerRefusalCode } from './refusal';
export * from './views';

const later = (): never => {
	throw new Error('not written yet');
};

export interface Config {
	readonly dataFolder: string;
	readonly host: string;
	readonly port: number;
	readonly origin: string;
}
export const readConfig: (
	env: Readonly<Record<string, string | undefined>>,
	argv: readonly string[]
) => Config = later;

/** both databases and the folder they live in; opaque to pages */
export interface Ledger {
	readonly folder: string;
	close(): void;
}
export const openLedger: (folder: string, options: { migrate: boolean }) => Ledger = later;
export const getLedger: () => Ledger = later;

export const listPeople: (ledger: Ledger) => PersonView[] = later;
export const choosePerson: (ledger: Ledger, name: string) => PersonView = later;

export const ledgerIsEmpty: (ledger: Ledger) => boolean = later;
export const startEmpty: (ledger: Ledger, actor: Actor) => void = later;
export const installExample: (ledger: Ledger, actor: Actor) => Promise<void> = later;
export const removeExample: (ledger: Ledger, actor: Actor) => void = later;
export const exampleState: (ledger: Ledger) => {
	installed: boolean;
	ridesReady: number;
	ridesTotal: number;
} = later;

export const programmeRows: (ledger: Ledger) => BuildRow[] = later;
export interface RideQuery {
	/** from 1 */
	page: number;
	pageSize: number;
	buildId?: number;
	wheelId?: number;
	/** only rides that a person must still answer something about */
	onlyNeeds?: boolean;
}
export const listRides: (ledger: Ledger, query: RideQuery) => { rows: RideRow[]; total: number } = later;
/** null when there is no such ride */
export const rideView: (ledger: Ledger, rideId: number) => RideView | null = later;
export const listImports: (ledger: Ledger, query: { limit: number }) => ImportView[] = later;
export const retryImport: (ledger: Ledger, actor: Actor, importId: number) => void = later;

export interface VerdictInput {
	verdict: 'confirmed' | 'rejected';
	reason?: RejectReason | null;
	note?: string;
}
export const recordVerdict: (ledger: Ledger, actor: Actor, eventId: number, input: VerdictInput) => void =
	later;
export const undoVerdict: (ledger: Ledger, actor: Actor, eventId: number) => void = later;

/** what is not named stays as it is; null takes a hand-made answer back */
export interface RideAnswers {
	wheelId?: number | null;
	buildId?: number | null;
	riderId?: number | null;
	trainer?: boolean | null;
	wet?: boolean | null;
}
export const assignRide: (ledger: Ledger, actor: Actor, rideId: number, answers: RideAnswers) => void = later;
export const withdrawRide: (ledger: Ledger, actor: Actor, rideId: number, reason: string) => void = later;
export const restoreRide: (ledger: Ledger, actor: Actor, rideId: number) => void = later;
export const decideTwin: (
	ledger: Ledger,
	actor: Actor,
	rideId: number,
	decision: 'same recording' | 'different ride'
) => void = later;

export const listWheels: (ledger: Ledger) => WheelRow[] = later;
/** null when there is no such wheel */
export const wheelView: (ledger: Ledger, wheelId: number) => WheelView | null = later;
export const createWheel: (
	ledger: Ledger,
	actor: Actor,
	input: { name: string; hub: string; circumferenceM?: number | null }
) => number = later;
export const listBuilds: (ledger: Ledger) => BuildRow[] = later;
/** one build with where it was fitted and its rides */
export interface BuildView extends BuildRow {
	stepHubDeg: number | null;
	periods: {
		id: number;
		wheel: { id: number; name: string };
		from: Instant;
		until: Instant | null;
		totalM: number;
		rides: number;
	}[];
	rideList: RideRow[];
}
/** null when there is no such build */
export const buildView: (ledger: Ledger, buildId: number) => BuildView | null = later;
export const createBuild: (
	ledger: Ledger,
	actor: Actor,
	input: { name: string; description: string; stepHubDeg?: number | null }
) => number = later;
/** `from` and `until` are instants (ISO 8601 with Z or offset) */
export const fitBuild: (
	ledger: Ledger,
	actor: Actor,
	input: { wheelId: number; buildId: number; from: Instant; until?: Instant | null }
) => number = later;
export const endFittedPeriod: (ledger: Ledger, actor: Actor, periodId: number, until: Instant) => void =
	later;

export const comparison: (ledger: Ledger, buildIds: readonly number[]) => ComparisonView = later;
export interface Settings {
	workshopName: string;
	/** IANA name, e.g. "Europe/Lisbon" */
	timeZone: string;
}
export const getSettings: (ledger: Ledger) => Settings = later;
export const setSettings: (ledger: Ledger, actor: Actor, settings: Partial<Settings>) => void = later;
/** the traces of a ride at one value a second; null when there is no such ride or they are not derived yet */
export const rideChannels: (
	ledger: Ledger,
	rideId: number
) => { length: number; channels: { name: string; values: Float32Array }[] } | null = later;
