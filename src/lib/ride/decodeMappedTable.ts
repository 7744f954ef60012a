import { assembleRide } from './assembleRide';
import { mappingFault, type ColumnMapping } from './columnMapping';
import { MAX_LOGGER_BYTES, READ_LIMITS, type ReadLimits } from './limits';
import { mappedColumns, wantedColumns, type TimedColumn } from './mappedColumns';
import { readTableColumns } from './readLoggerRows';
import type { Columns, RecordedChannel } from './recordedRide';
import { refusal } from './refusal';
import type { Ride } from './ride';
import { tableHead } from './tableHead';
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
	const rows = readTableColumns(
		bytes,
		head.bodyAt,
		{ delimiter, columns: head.names.length, lines: head.lines },
		wantedColumns(mapping, delimiter),
		limits.samples
	);
	const { crankRpm, wheelRpm, crankTorqueNm } = mappedColumns(mapping, rows.values);
	const { together, apart } = byClock(crankRpm.timeS, { wheelRpm, crankTorqueNm });
	// an angle has no speed where its clock stands still or goes back; such rows fall out in any case
	const startedAtMs = mapping.time.unit === 'instant' ? 0 : head.startedAtMs;
	const ride = assembleRide(
		{
			format: 'logger-csv',
			atMs: toMs(crankRpm.timeS),
			columns: { cadenceRpm: crankRpm.value, ...together },
			apart,
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

const toMs = (timeS: Float64Array) => timeS.map((second) => second * 1000);

/** Columns on the crank's clock, and those with clocks of their own. */
function byClock(
	crankTimeS: Float64Array,
	columns: Readonly<Record<'wheelRpm' | 'crankTorqueNm', TimedColumn>>
): { together: Columns; apart: RecordedChannel[] } {
	const together: { wheelRpm?: Float64Array; crankTorqueNm?: Float64Array } = {};
	const apart: RecordedChannel[] = [];
	for (const name of ['wheelRpm', 'crankTorqueNm'] as const) {
		const { timeS, value } = columns[name];
		if (timeS === crankTimeS) together[name] = value;
		else apart.push({ name, atMs: toMs(timeS), value });
	}
	return { together, apart };
}
