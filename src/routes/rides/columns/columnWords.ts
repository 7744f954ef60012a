import type { ClockColumn, ColumnMapping, Load, Motion, TimeUnit } from '$lib/ride/columnMapping';

export const TIME_WORDS: Readonly<Record<TimeUnit, string>> = {
	s: 'seconds',
	ms: 'milliseconds',
	us: 'microseconds',
	instant: 'date and time of day'
};

export const MOTION_WORDS: Readonly<Record<Motion, string>> = {
	rpm: 'turns a minute',
	'rad/s': 'radians a second',
	degrees: 'angle in degrees',
	radians: 'angle in radians',
	turns: 'angle in turns',
	'pulse times': 'instant of the last pulse',
	'pulse count': 'number of pulses so far'
};

export const LOAD_WORDS: Readonly<Record<Load, string>> = {
	Nm: 'torque at the crank, Nm',
	W: 'power, W'
};

/** A mapping as lines that a person reads: quantity, the column's name, what it holds. */
export function columnLines(
	{ time, crank, wheel, load }: ColumnMapping,
	names: readonly string[]
): { what: string; column: string; as: string }[] {
	const named = (column: number) => names[column] ?? `column ${column + 1}`;
	const pulses = (count: number | undefined) => (count === undefined ? '' : `, ${count} a turn`);
	const clock = (what: string, own: ClockColumn | undefined) =>
		own ? [{ what, column: named(own.column), as: TIME_WORDS[own.unit] }] : [];
	return [
		...clock('Time', time),
		{ what: 'Crank', column: named(crank.column), as: MOTION_WORDS[crank.as] + pulses(crank.pulsesPerTurn) },
		{
			what: 'Rear wheel',
			column: named(wheel.column),
			as: MOTION_WORDS[wheel.as] + pulses(wheel.pulsesPerTurn)
		},
		...clock('Time of the wheel', wheel.clock),
		...(load ? [{ what: 'Torque or power', column: named(load.column), as: LOAD_WORDS[load.as] }] : []),
		...clock('Time of torque or power', load?.clock)
	];
}
