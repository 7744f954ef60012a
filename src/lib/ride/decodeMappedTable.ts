import { assembleRide } from './assembleRide';
import { mappingFault, type ColumnMapping } from './columnMapping';
import { MAX_LOGGER_BYTES, READ_LIMITS, type ReadLimits } from './limits';
import { mappedColumns, timeIn } from './mappedColumns';
import { readTableColumns } from './readLoggerRows';
import { refusal } from './refusal';
import type { Ride } from './ride';
import { numberIn, tableHead } from './tableHead';
import { tableWarnings } from './tableWarnings';

/**
 * Reads a logger's table whose columns a person has named.
 *
 * @param bytes the file as it was uploaded
 * @param mapping null = nobody has named them yet
 * @returns the ride, as one with named columns
 * @throws RideRefused 'columns-not-known' where they must be named first; 'not-a-ride-file' where there is no table
 */
export function decodeMappedTable(
	bytes: Uint8Array,
	mapping: ColumnMapping | null,
	limits: ReadLimits = READ_LIMITS
): Ride {
	if (bytes.length > MAX_LOGGER_BYTES)
		throw refusal('too-large', `${bytes.length} bytes, the bound is ${MAX_LOGGER_BYTES}`);
	const head = tableHead(bytes);
	if (!head) throw refusal('not-a-ride-file', 'no table of numbers in it');
	const fault = mapping && mappingFault(mapping, head.names.length);
	if (!mapping || fault)
		throw refusal('columns-not-known', fault ?? `columns: ${head.names.join(', ').slice(0, 400)}`);
	const { delimiter } = head;
	const asNumber = (cell: string) => numberIn(cell, delimiter);
	const { time, crank, wheel, load } = mapping;
	const rows = readTableColumns(
		bytes,
		head.bodyAt,
		{ delimiter, columns: head.names.length, lines: head.lines },
		[
			{ column: time.column, read: (cell) => timeIn(cell, time.unit, delimiter) },
			{ column: crank.column, read: asNumber },
			{ column: wheel.column, read: asNumber },
			{ column: load?.column ?? -1, read: asNumber }
		],
		limits.samples
	);
	const { timeS, crankRpm, wheelRpm, crankTorqueNm } = mappedColumns(mapping, rows.values);
	// an angle has no speed where its clock stands still or goes back; such rows fall out in any case
	const startedAtMs = time.unit === 'instant' ? 0 : head.startedAtMs;
	const ride = assembleRide(
		{
			format: 'logger-csv',
			atMs: timeS.map((second) => second * 1000),
			columns: { cadenceRpm: crankRpm, wheelRpm, crankTorqueNm },
			marksAtMs: [],
			pausesMs: [],
			gearEvents: [],
			sensors: [],
			localOffsetS: null,
			speedSource: 'wheel',
			trainer: null,
			motorAssisted: null,
			warnings: tableWarnings(startedAtMs, rows)
		},
		limits
	);
	return { ...ride, startedAtMs: startedAtMs === null ? 0 : startedAtMs + ride.startedAtMs };
}
