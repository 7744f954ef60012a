/** A message of the FIT parser: fields by their profile names; any of them may be missing or odd. */
export type FitMessage = Readonly<Record<string, unknown>>;

/** The messages of one part that are looked at, but its records. */
export interface FitMessages {
	readonly events: readonly FitMessage[];
	readonly laps: readonly FitMessage[];
	readonly sessions: readonly FitMessage[];
	readonly sports: readonly FitMessage[];
	readonly devices: readonly FitMessage[];
	readonly activities: readonly FitMessage[];
	readonly fileIds: readonly FitMessage[];
}

/** instants before 1998 in a FIT file count from power-on, not from a calendar (FIT profile, date_time) */
const FIRST_CALENDAR_MS = 631_065_600_000 + 0x10000000 * 1000;

/**
 * A field as a number.
 * @returns NaN when it is missing or no number
 */
export function numberOf(message: FitMessage, field: string): number {
	const value = message[field];
	return typeof value === 'number' && Number.isFinite(value) ? value : NaN;
}

/**
 * A field as an instant, milliseconds since 1970 UTC.
 * @returns NaN when it is missing or the device had no calendar time
 */
export function instantOf(message: FitMessage, field: string): number {
	const value = message[field];
	const ms = value instanceof Date ? value.getTime() : NaN;
	return ms >= FIRST_CALENDAR_MS ? ms : NaN;
}
