import { assembleRide } from './assembleRide';
import { MAX_LOGGER_BYTES, READ_LIMITS, type ReadLimits } from './limits';
import { loggerHeader, type LoggerHeader } from './loggerHeader';
import { readLoggerRows, type LoggerRows } from './readLoggerRows';
import { refusal } from './refusal';
import type { Ride, RideWarning } from './ride';

/** bytes in which the head of the file must end */
const HEAD_BYTES = 65_536;

/**
 * Reads a logger's CSV file: crank and wheel on their own fast clock (10 to 500 Hz), torque as it is at
 * each instant. No speed and no power are made up from them: what circumference turns with the wheel is
 * not in the file, and instantaneous torque is no mean.
 * @param bytes the file as it was uploaded
 * @returns the ride; without a line `# started_at: ISO` it begins at instant 0, with a warning
 * @throws RideRefused when crank or wheel is missing or the file is too large or damaged
 */
export async function decodeLoggerCsv(bytes: Uint8Array, limits: ReadLimits = READ_LIMITS): Promise<Ride> {
	if (bytes.length > MAX_LOGGER_BYTES) {
		throw refusal('too-large', `${bytes.length} bytes, the bound is ${MAX_LOGGER_BYTES}`);
	}
	const head = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes.subarray(0, HEAD_BYTES));
	const header = loggerHeader(head);
	if (!header) throw refusal('not-a-ride-file', 'no line names time_s and a crank or wheel column');
	const bodyAt = new TextEncoder().encode(head.slice(0, header.bodyAt)).length;
	const rows = readLoggerRows(bytes, bodyAt, header, limits.samples);
	const ride = assembleRide(
		{
			format: 'logger-csv',
			atMs: rows.timeS.map((second) => second * 1000),
			columns: {
				cadenceRpm: rows.crankRpm,
				wheelRpm: rows.wheelRpm,
				crankTorqueNm: rows.crankTorqueNm
			},
			marksAtMs: [],
			pausesMs: [],
			gearEvents: [],
			sensors: [],
			localOffsetS: null,
			speedSource: 'wheel',
			trainer: null,
			motorAssisted: null,
			warnings: warningsOf(header, rows)
		},
		limits
	);
	// the clock was put in order at small numbers, where a thousandth of a second is exact
	const startedAtMs = header.startedAtMs === null ? 0 : header.startedAtMs + ride.startedAtMs;
	return { ...ride, startedAtMs };
}

function warningsOf(header: LoggerHeader, rows: LoggerRows): RideWarning[] {
	const warnings: RideWarning[] = [];
	if (header.startedAtMs === null) {
		warnings.push({
			code: 'no-clock-in-logger',
			sentence: 'The logger knows no date. Say when this ride was, so that it finds the build on the wheel.',
			detail: 'no comment line "# started_at: ISO" before the column names'
		});
	}
	if (rows.ragged > 0) {
		warnings.push({
			code: 'rows-left-out',
			sentence: 'Some lines of the file have missing or surplus columns and were left out.',
			detail: `${rows.ragged} lines, the first is line ${rows.firstRaggedLine}`
		});
	}
	if (rows.notNumbers > 0) {
		warnings.push({
			code: 'cells-left-out',
			sentence: 'Some cells of the file hold no number and were left out.',
			detail: `${rows.notNumbers} cells`
		});
	}
	return warnings;
}
