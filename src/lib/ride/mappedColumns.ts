import type { ColumnMapping, TimeUnit } from './columnMapping';
import { parseInstant } from './parseInstant';
import { numberIn, type TableHead } from './tableHead';
import { turnsToRpm } from './turnsToRpm';

const TO_S: Readonly<Record<Exclude<TimeUnit, 'instant'>, number>> = { s: 1, ms: 1e-3, us: 1e-6 };
/** below this a power says hardly anything of a torque */
const LEAST_RPM = 30;

/** What a table says of crank, wheel and torque, on its own clock. */
export interface MappedColumns {
	/** seconds; of instants since 1970 UTC */
	readonly timeS: Float64Array;
	readonly crankRpm: Float64Array;
	readonly wheelRpm: Float64Array;
	/** at each instant as recorded; from power where that was recorded */
	readonly crankTorqueNm: Float64Array;
}

/** A cell of the time column in seconds; NaN = none. */
export function timeIn(cell: string, unit: TimeUnit, delimiter: string): number {
	if (unit !== 'instant') return numberIn(cell, delimiter) * TO_S[unit];
	const instant = parseInstant(cell.replace(' ', 'T').replace(',', '.'));
	return instant ? instant.atMs / 1000 : NaN;
}

/** What the columns that were named mean; `values` are those of time, crank, wheel and load. */
export function mappedColumns(mapping: ColumnMapping, values: readonly Float64Array[]): MappedColumns {
	const [timeS, crank, wheel, load] = values;
	const { unit } = mapping.time;
	const pulseToS = unit === 'instant' ? 1 : TO_S[unit];
	const crankRpm = turnsToRpm(timeS, crank, mapping.crank, pulseToS);
	const wheelRpm = turnsToRpm(timeS, wheel, mapping.wheel, pulseToS);
	const crankTorqueNm =
		mapping.load?.as === 'W'
			? load.map((watts, i) => (crankRpm[i] >= LEAST_RPM ? (watts * 60) / (2 * Math.PI * crankRpm[i]) : NaN))
			: load;
	return { timeS, crankRpm, wheelRpm, crankTorqueNm };
}

/** The first rows of a table as they would be understood, for a person to look at. */
export function understoodRows(head: TableHead, mapping: ColumnMapping): MappedColumns {
	const { delimiter, rows } = head;
	const column = (place: number | undefined, read = (cell: string) => numberIn(cell, delimiter)) =>
		Float64Array.from(rows, (row) => (place === undefined ? NaN : read(row[place] ?? '')));
	return mappedColumns(mapping, [
		column(mapping.time.column, (cell) => timeIn(cell, mapping.time.unit, delimiter)),
		column(mapping.crank.column),
		column(mapping.wheel.column),
		column(mapping.load?.column)
	]);
}
