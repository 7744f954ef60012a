import type { ColumnMapping } from './columnMapping';
import { decodeFit } from './decodeFit';
import { decodeGpx } from './decodeGpx';
import { decodeLoggerCsv } from './decodeLoggerCsv';
import { decodeMappedTable } from './decodeMappedTable';
import { decodeTcx } from './decodeTcx';
import { READ_LIMITS, type ReadLimits } from './limits';
import { recogniseFormat } from './recogniseFormat';
import { refusal } from './refusal';
import { RideRefused, type Ride } from './ride';
import { tableHead } from './tableHead';
import { isGzip, unpackGzip } from './unpackGzip';

/**
 * Reads a ride file of any format that is known.
 * @param bytes the file as it was uploaded, packed with gzip or not; its format is told from them, never from the name
 * @param fileName for the engineer's detail only
 * @param limits what the file may ask of this machine
 * @param columns of a logger's table, where a person has named them
 * @returns the ride
 * @throws RideRefused with a code, a sentence for the rider and a detail for the engineer
 */
export async function decodeRide(
	bytes: Uint8Array,
	fileName: string,
	limits: ReadLimits = READ_LIMITS,
	columns: ColumnMapping | null = null
): Promise<Ride> {
	try {
		return await decodeKnown(
			isGzip(bytes) ? await unpackGzip(bytes, limits.unpackedBytes) : bytes,
			limits,
			columns
		);
	} catch (error) {
		if (!(error instanceof RideRefused)) throw error;
		throw new RideRefused(error.code, error.sentence, `${fileName}: ${error.detail}`);
	}
}

async function decodeKnown(
	bytes: Uint8Array,
	limits: ReadLimits,
	columns: ColumnMapping | null
): Promise<Ride> {
	switch (recogniseFormat(bytes)) {
		case 'fit':
			return await decodeFit(bytes, limits);
		case 'tcx':
			return await decodeTcx(bytes, limits);
		case 'gpx':
			return await decodeGpx(bytes, limits);
		case 'logger-csv':
			return await decodeLoggerCsv(bytes, limits);
		default:
			if (tableHead(bytes)) return decodeMappedTable(bytes, columns, limits);
			throw refusal('not-a-ride-file', `${bytes.length} bytes, first ${firstBytes(bytes)}`);
	}
}

function firstBytes(bytes: Uint8Array): string {
	return Array.from(bytes.subarray(0, 12), (byte) => byte.toString(16).padStart(2, '0')).join(' ');
}
