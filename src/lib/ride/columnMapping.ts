/** How a logger writes its clock: seconds and their parts since any moment, or date and time of day (ISO 8601). */
export const TIME_UNITS = ['s', 'ms', 'us', 'instant'] as const;
/** What a column of crank or wheel holds; angles may run on or begin again after each turn. */
export const MOTIONS = ['rpm', 'rad/s', 'degrees', 'radians', 'turns', 'pulse times', 'pulse count'] as const;
export const LOADS = ['Nm', 'W'] as const;

export type TimeUnit = (typeof TIME_UNITS)[number];
export type Motion = (typeof MOTIONS)[number];
export type Load = (typeof LOADS)[number];

export interface ClockColumn {
	/** 0 = first */
	readonly column: number;
	readonly unit: TimeUnit;
}

export interface MotionColumn {
	/** 0 = first */
	readonly column: number;
	readonly as: Motion;
	/** of pulses alone: how many a turn */
	readonly pulsesPerTurn?: number;
	/** where it has a clock of its own; not there = the clock of the crank */
	readonly clock?: ClockColumn;
}

/** Which columns of a logger's table are what, as a person said it. */
export interface ColumnMapping {
	/** of the crank, and of all that has no clock of its own */
	readonly time: ClockColumn;
	readonly crank: Omit<MotionColumn, 'clock'>;
	readonly wheel: MotionColumn;
	/** torque at the crank, or power; null = none was recorded */
	readonly load: { readonly column: number; readonly as: Load; readonly clock?: ClockColumn } | null;
}

const MOST_PULSES = 1000;

/**
 * Whether a mapping fits a table.
 *
 * @param columns how many the table has
 * @returns null, or one sentence that says what is wrong
 */
export function mappingFault(mapping: ColumnMapping, columns: number): string | null {
	const { time, crank, wheel, load } = mapping;
	const clocks = [time, wheel.clock, load?.clock].filter((clock) => clock !== undefined);
	const values = [crank.column, wheel.column, ...(load ? [load.column] : [])];
	const used = [...new Set(clocks.map(({ column }) => column)), ...values];
	if (!used.every((column) => Number.isInteger(column) && column >= 0 && column < columns))
		return 'Say of time, crank and wheel in which column each stands.';
	if (new Set(used).size < used.length) return 'A column can be one thing only.';
	if (!clocks.every(({ unit }) => TIME_UNITS.includes(unit))) return 'Say in which unit the time stands.';
	if (new Set(clocks.map(({ unit }) => unit === 'instant')).size > 1)
		return 'Clocks of one table begin together: date and time of day in all of them, or in none.';
	if (load && !LOADS.includes(load.as)) return 'Say whether that column is torque or power.';
	for (const { as, pulsesPerTurn: pulses } of [crank, wheel]) {
		if (!MOTIONS.includes(as)) return 'Say what the columns of crank and wheel hold.';
		if (as.startsWith('pulse') && !(Number.isInteger(pulses) && pulses! >= 1 && pulses! <= MOST_PULSES))
			return `Say how many pulses a turn has, 1 to ${MOST_PULSES}.`;
	}
	return null;
}
