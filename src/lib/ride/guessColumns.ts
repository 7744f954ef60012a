import type { ColumnMapping, Load, Motion, TimeUnit } from './columnMapping';
import { parseInstant } from './parseInstant';
import type { TableHead } from './tableHead';

/** A mapping that is not whole yet: columns that nothing speaks for are -1. */
export interface ColumnGuess {
	time: { column: number; unit: TimeUnit };
	crank: { column: number; as: Motion; pulsesPerTurn?: number };
	wheel: { column: number; as: Motion; pulsesPerTurn?: number };
	load: { column: number; as: Load };
}

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
	const time = find(/time|stamp|^t\b|^sec|zeit|date/);
	const crank = find(/crank|cad|pedal/, [time]);
	const wheel = find(/wheel|hub|shell|speed/, [time, crank]);
	const torque = find(/torque|moment|\bnm\b|_nm$/, [time, crank, wheel]);
	const power = find(/power|watt|\bw\b|_w$/, [time, crank, wheel]);
	const isPower = torque === -1 && power !== -1;
	const load = isPower ? { column: power, as: 'W' as const } : { column: torque, as: 'Nm' as const };
	return {
		time: { column: time, unit: timeUnit(lower[time] ?? '', rows[0]?.[time] ?? '') },
		crank: { column: crank, as: motion(lower[crank] ?? '') },
		wheel: { column: wheel, as: motion(lower[wheel] ?? '') },
		load: { ...load }
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
	if (/pulse|tick/.test(name)) return 'pulse times';
	if (/deg|angle|°/.test(name)) return 'degrees';
	if (/rad/.test(name)) return 'radians';
	return /turn|rev/.test(name) ? 'turns' : 'rpm';
}
