import { fitHeader } from './fitHeader';
import { loggerHeader } from './loggerHeader';
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
	return loggerHeader(start) ? 'logger-csv' : null;
}
