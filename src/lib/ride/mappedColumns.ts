import type { ClockColumn, ColumnMapping, TimeUnit } from './columnMapping';
import { longestRisingRun } from './longestRisingRun';
import { parseInstant } from './parseInstant';
import { numberIn, type TableHead } from './tableHead';
import { turnsToRpm } from './turnsToRpm';
import { valuesAt } from './valuesAt';

const TO_S: Readonly<Record<Exclude<TimeUnit, 'instant'>, number>> = { s: 1, ms: 1e-3, us: 1e-6 };
/** below this a power says hardly anything of a torque */
const LEAST_RPM = 30;

/** One quantity, value by value on the clock beside it. */
export interface TimedColumn {
	/** seconds; of instants since 1970 UTC */
	readonly timeS: Float64Array;
	readonly value: Float64Array;
}

/** What a table says of crank, wheel and torque; those without a clock of their own share the crank's by reference. */
export interface MappedColumns {
	readonly crankRpm: TimedColumn;
	readonly wheelRpm: TimedColumn;
	/** at each instant as recorded; from power where that was recorded */
	readonly crankTorqueNm: TimedColumn;
}

/** The columns of a table that a mapping asks for, in the order in which `mappedColumns` takes their values. */
export function wantedColumns(
	mapping: ColumnMapping,
	delimiter: string
): { column: number; read: (cell: string) => number }[] {
	const { time, crank, wheel, load } = mapping;
	const asNumber = (cell: string) => numberIn(cell, delimiter);
	const clock = (own: ClockColumn | undefined) => ({
		column: own?.column ?? -1,
		read: (cell: string) => timeIn(cell, own?.unit ?? 's', delimiter)
	});
	return [
		clock(time),
		{ column: crank.column, read: asNumber },
		{ column: wheel.column, read: asNumber },
		{ column: load?.column ?? -1, read: asNumber },
		// a column that nobody asks for would be held in memory all the same
		...(wheel.clock || load?.clock ? [clock(wheel.clock)] : []),
		...(load?.clock ? [clock(load.clock)] : [])
	];
}

/** A cell of the time column in seconds; NaN = none. */
function timeIn(cell: string, unit: TimeUnit, delimiter: string): number {
	if (unit !== 'instant') return numberIn(cell, delimiter) * TO_S[unit];
	const instant = parseInstant(cell.replace(' ', 'T').replace(',', '.'));
	return instant ? instant.atMs / 1000 : NaN;
}

/** What the columns that were named mean; `values` are those of `wantedColumns`. */
export function mappedColumns(mapping: ColumnMapping, values: readonly Float64Array[]): MappedColumns {
	const [timeS, crank, wheel, load, wheelTimeS, loadTimeS] = values;
	const crankRpm = { timeS, value: turnsToRpm(timeS, crank, mapping.crank, toS(mapping.time)) };
	const onWheel = onClock(timeS, wheel, mapping.wheel.clock && wheelTimeS);
	const pulseToS = toS(mapping.wheel.clock ?? mapping.time);
	const wheelRpm = {
		timeS: onWheel.timeS,
		value: turnsToRpm(onWheel.timeS, onWheel.value, mapping.wheel, pulseToS)
	};
	const loaded = onClock(timeS, load, mapping.load?.clock && loadTimeS);
	const crankTorqueNm = mapping.load?.as === 'W' ? torqueOf(loaded, crankRpm) : loaded;
	return { crankRpm, wheelRpm, crankTorqueNm };
}

function toS({ unit }: ClockColumn): number {
	return unit === 'instant' ? 1 : TO_S[unit];
}

/** Of a clock of its own only the rows whose instants rise: a shorter list ends in empty cells. */
function onClock(timeS: Float64Array, value: Float64Array, ownS: Float64Array | undefined): TimedColumn {
	if (!ownS) return { timeS, value };
	const rising = longestRisingRun(ownS);
	const rows = rising.filter((row, i) => i === 0 || ownS[row] > ownS[rising[i - 1]]);
	return {
		timeS: Float64Array.from(rows, (i) => ownS[i]),
		value: Float64Array.from(rows, (i) => value[i])
	};
}

function torqueOf(watts: TimedColumn, crankRpm: TimedColumn): TimedColumn {
	const { timeS } = watts;
	const rpm = timeS === crankRpm.timeS ? crankRpm.value : valuesAt(crankRpm, timeS);
	const value = watts.value.map((one, i) =>
		rpm[i] >= LEAST_RPM ? (one * 60) / (2 * Math.PI * rpm[i]) : NaN
	);
	return { timeS, value };
}

/** The first rows of a table as they would be understood, for a person to look at. */
export function understoodRows(head: TableHead, mapping: ColumnMapping): MappedColumns {
	const wanted = wantedColumns(mapping, head.delimiter);
	return mappedColumns(
		mapping,
		wanted.map(({ column, read }) =>
			Float64Array.from(head.rows, (row) => (column === -1 ? NaN : read(row[column] ?? '')))
		)
	);
}
