import type { ClockColumn, ColumnMapping, Load, Motion, TimeUnit } from './columnMapping';
import { parseInstant } from './parseInstant';
import type { TableHead } from './tableHead';

/** A mapping that is not whole yet: columns that nothing speaks for are -1. */
export interface ColumnGuess {
	time: { column: number; unit: TimeUnit };
	crank: { column: number; as: Motion; pulsesPerTurn?: number };
	wheel: { column: number; as: Motion; pulsesPerTurn?: number; clock?: ClockColumn };
	load: { column: number; as: Load; clock?: ClockColumn };
}

const TIME = /time|stamp|^t\b|^t_|^sec|zeit|date/;
const CRANK = /crank|cad|pedal/;
const WHEEL = /wheel|hub|shell|speed/;
const TORQUE = /torque|moment|\bnm\b|_nm$/;
const POWER = /power|watt|\bw\b|_w$/;

/**
 * What the names of columns speak for; a person looks at it before anything is read by it.
 *
 * @param head of the table
 * @param said what was said before, which wins
 */
export function guessColumns({ names, rows }: TableHead, said: ColumnMapping | null): ColumnGuess {
	if (said) {
		const { time, crank, wheel, load } = said;
		return {
			time: { ...time },
			crank: { ...crank },
			wheel: { ...wheel },
			load: load ? { ...load } : { column: -1, as: 'Nm' }
		};
	}
	const lower = names.map((name) => name.toLowerCase());
	const find = (pattern: RegExp, not: readonly number[] = []) =>
		lower.findIndex((name, i) => pattern.test(name) && !not.includes(i));
	const times = lower.flatMap((name, i) => (TIME.test(name) ? [i] : []));
	const clockOf = (pattern: RegExp) => times.find((i) => pattern.test(lower[i])) ?? -1;
	// the crank's clock, or the one that belongs to nothing else
	const time =
		[clockOf(CRANK), ...times.filter((i) => !WHEEL.test(lower[i])), ...times].find((i) => i >= 0) ?? -1;
	const crank = find(CRANK, times);
	// a time of the wheel alone is that of its pulses
	const named = find(WHEEL, [...times, crank]);
	const wheel = named === -1 ? find(WHEEL, [time, crank]) : named;
	const torque = find(TORQUE, [...times, crank, wheel]);
	const power = find(POWER, [...times, crank, wheel]);
	const isPower = torque === -1 && power !== -1;
	const load = isPower ? { column: power, as: 'W' as const } : { column: torque, as: 'Nm' as const };
	const unitOf = (i: number) => timeUnit(lower[i] ?? '', rows[0]?.[i] ?? '');
	const own = (pattern: RegExp) => {
		const column = clockOf(pattern);
		return [-1, time, wheel].includes(column) ? {} : { clock: { column, unit: unitOf(column) } };
	};
	return {
		time: { column: time, unit: unitOf(time) },
		crank: { column: crank, as: motion(lower[crank] ?? '') },
		wheel: { column: wheel, as: motion(lower[wheel] ?? ''), ...own(WHEEL) },
		load: { ...load, ...(load.column === -1 ? {} : own(isPower ? POWER : TORQUE)) }
	};
}

function timeUnit(name: string, cell: string): TimeUnit {
	if (parseInstant(cell.replace(' ', 'T').replace(',', '.'))) return 'instant';
	if (/(\b|_)(ms|milli)/.test(name)) return 'ms';
	return /(\b|_)(us|µs|micro)/.test(name) ? 'us' : 's';
}

function motion(name: string): Motion {
	if (/rpm|min/.test(name)) return 'rpm';
	if (/rad.?s/.test(name)) return 'rad/s';
	if (/count/.test(name)) return 'pulse count';
	if (/pulse|tick|time/.test(name)) return 'pulse times';
	if (/deg|angle|°/.test(name)) return 'degrees';
	if (/rad/.test(name)) return 'radians';
	return /turn|rev/.test(name) ? 'turns' : 'rpm';
}
