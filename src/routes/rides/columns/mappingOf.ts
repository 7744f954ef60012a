import type {
	ClockColumn,
	ColumnMapping,
	Load,
	Motion,
	MotionColumn,
	TimeUnit
} from '$lib/ride/columnMapping';
import { rowId, text } from '../../forms';

/** What the form says of the columns; the server judges whether it fits. */
export function mappingOf(form: FormData): ColumnMapping {
	const load = rowId(form, 'load');
	return {
		time: { column: rowId(form, 'time') ?? -1, unit: text(form, 'timeUnit') as TimeUnit },
		crank: motionOf(form, 'crank'),
		wheel: { ...motionOf(form, 'wheel'), ...ownClock(form, 'wheel') },
		load: load === null ? null : { column: load, as: text(form, 'loadAs') as Load, ...ownClock(form, 'load') }
	};
}

function motionOf(form: FormData, name: 'crank' | 'wheel'): Omit<MotionColumn, 'clock'> {
	const as = text(form, `${name}As`) as Motion;
	const column = rowId(form, name) ?? -1;
	return as.startsWith('pulse')
		? { column, as, pulsesPerTurn: rowId(form, `${name}Pulses`) ?? NaN }
		: { column, as };
}

function ownClock(form: FormData, name: 'wheel' | 'load'): { clock?: ClockColumn } {
	const column = rowId(form, `${name}Clock`);
	return column === null ? {} : { clock: { column, unit: text(form, `${name}ClockUnit`) as TimeUnit } };
}
