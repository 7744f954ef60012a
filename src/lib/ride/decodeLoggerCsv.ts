import { assembleRide } from './assembleRide';
import { MAX_LOGGER_BYTES, READ_LIMITS, type ReadLimits } from './limits';
import { loggerHeader } from './loggerHeader';
import { readLoggerRows } from './readLoggerRows';
import { refusal } from './refusal';
import type { Ride } from './ride';
import { tableWarnings } from './tableWarnings';

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
			warnings: tableWarnings(header.startedAtMs, rows)
		},
		limits
	);
	// the clock was put in order at small numbers, where a thousandth of a second is exact
	const startedAtMs = header.startedAtMs === null ? 0 : header.startedAtMs + ride.startedAtMs;
	return { ...ride, startedAtMs };
}
