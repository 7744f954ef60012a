import { inflateRawSync } from 'node:zlib';
import { unpackValues } from '../../../jobs/analysis/unpackValues';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';

export interface RideChannels {
	/** values at one a second, from the first record on */
	readonly length: number;
	readonly channels: { readonly name: string; readonly values: Float32Array<ArrayBuffer> }[];
}

/** an inflated chunk of 4096 values is never larger: ten bytes a value */
export const LARGEST_CHUNK_BYTES = 4096 * 10;

/**
 * The traces of a ride at one value a second; NaN = not known.
 *
 * @param wanted version of the analysis (the current one when not given) and names (all when not given)
 * @returns null when there is no such ride or its traces have not been derived
 */
export function rideChannels(
	ledger: Ledger,
	rideId: number,
	wanted: { version?: number; names?: readonly string[] } = {}
): RideChannels | null {
	const ride = ledger.database
		.prepare<[number], { sha256: string }>('SELECT sha256 FROM ride WHERE id = ?')
		.get(rideId);
	if (!ride) return null;
	const version = wanted.version ?? currentVersion(ledger);
	const found = ledger.channels
		.prepare<[string, number], { name: string; length: number; step: number }>(
			'SELECT name, length, step FROM channel WHERE sha256 = ? AND version = ? AND sample_s = 1 ORDER BY name'
		)
		.all(ride.sha256, version)
		.filter(({ name }) => wanted.names?.includes(name) ?? true);
	if (found.length === 0) return null;
	const chunksOf = ledger.channels.prepare<[string, number, string], { count: number; packed: Buffer }>(
		`SELECT count, packed FROM channel_chunk
		WHERE sha256 = ? AND version = ? AND name = ? AND level = 0 AND side = 'value' ORDER BY chunk`
	);
	return {
		length: found[0].length,
		channels: found.map(({ name, length, step }) => {
			const values = new Float32Array(length).fill(NaN);
			let at = 0;
			for (const { count, packed } of chunksOf.all(ride.sha256, version, name)) {
				const bytes = inflateRawSync(packed, { maxOutputLength: LARGEST_CHUNK_BYTES });
				unpackValues(bytes, step, values, at, count);
				at += count;
			}
			return { name, values };
		})
	};
}
