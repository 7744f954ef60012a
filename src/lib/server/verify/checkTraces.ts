import type Database from 'better-sqlite3';
import { inflateRawSync } from 'node:zlib';
import { unpackValues } from '../../../jobs/analysis/unpackValues';
import { breathe } from './breathe';
import type { PartFindings } from './verifyReport';

interface ChannelRow {
	name: string;
	version: number;
	length: number;
	step: number;
}
interface ChunkRow {
	level: number;
	side: string;
	count: number;
	packed: Buffer;
}

/**
 * Unpacks every trace: each piece must give as many values as it says, and the pieces of the finest level as
 * many as the trace is long. Rides without traces are noted, since traces are made again from their sources.
 *
 * @param found what was found about the database as such; added to
 * @param rides sources that have a ride and were not erased; empty when the ledger cannot be read
 */
export async function checkTraces(
	database: Database.Database,
	rides: readonly { id: number; sha256: string }[],
	found: PartFindings
): Promise<void> {
	const channels = database.prepare<[string], ChannelRow>(
		'SELECT name, version, length, step FROM channel WHERE sha256 = ?'
	);
	const chunks = database.prepare<[string, number, string], ChunkRow>(
		`SELECT level, side, count, packed FROM channel_chunk
		WHERE sha256 = ? AND version = ? AND name = ? ORDER BY level, side, chunk`
	);
	found.checked = 0;
	for (const { id, sha256 } of rides) {
		const startedMs = performance.now();
		found.checked++;
		try {
			const all = channels.all(sha256);
			if (all.length === 0) found.note(`ride ${id}`, 'It has no traces; they are made again from its file.');
			for (const channel of all) {
				const wrong = whatIsWrong(channel, chunks.all(sha256, channel.version, channel.name));
				if (wrong)
					found.damage(
						`ride ${id}`,
						`Its trace ${channel.name} (version ${channel.version}) ${wrong}; the ride's figures do not read it.`
					);
			}
		} catch (error) {
			found.damage(`ride ${id}`, `Its traces cannot be read: ${(error as Error).message}.`);
		}
		await breathe(startedMs);
	}
}

function whatIsWrong(channel: ChannelRow, chunks: readonly ChunkRow[]): string | null {
	let values = 0;
	for (const { level, count, packed } of chunks) {
		try {
			unpackValues(inflateRawSync(packed), channel.step, new Float64Array(count), 0, count);
		} catch (error) {
			return `cannot be unpacked (${(error as Error).message})`;
		}
		if (level === 0) values += count;
	}
	return values === channel.length ? null : `has ${values} values instead of ${channel.length}`;
}
