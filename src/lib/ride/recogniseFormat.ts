import { fitHeader } from './fitHeader';
import type { RideFormat } from './ride';

/** bytes looked at: a declaration, comments and the root element */
const LOOKED_AT = 4096;

/**
 * Tells the format of a ride file from its bytes; a name can be wrong.
 * @param bytes the file
 * @returns the format, or null when it is none that is known
 */
export function recogniseFormat(bytes: Uint8Array): RideFormat | null {
	if (fitHeader(bytes, 0)) return 'fit';
	const start = new TextDecoder('utf-8').decode(bytes.subarray(0, LOOKED_AT)).replace(/^\uFEFF/, '');
	if (/^\s*</.test(start)) {
		if (/<(\w+:)?TrainingCenterDatabase[\s>]/.test(start)) return 'tcx';
		if (/<(\w+:)?gpx[\s>]/.test(start)) return 'gpx';
		return null;
	}
	return isLoggerHeader(start) ? 'logger-csv' : null;
}

/** the first line that is no comment names a time and a crank or a wheel */
function isLoggerHeader(start: string): boolean {
	const header = start.split(/\r\n|\n|\r/).find((line) => line.trim() !== '' && !line.startsWith('#'));
	if (header === undefined || !/[,;\t]/.test(header)) return false;
	return /\btime_s\b/i.test(header) && /\b(crank|wheel)_\w+/i.test(header);
}
