import type { AnalysedFile } from '../../../jobs/analysis/messages';
import { isErased } from '../erasure/finishErasures';
import type { Ledger } from '../ledger/openLedger';

/** Writes the traces of a source, in place of what may be there of an attempt that broke off. */
export function saveChannels(ledger: Ledger, sha256: string, file: AnalysedFile): void {
	const { channels } = ledger;
	// erased while it was read
	if (isErased(ledger, sha256)) return;
	const version = file.analysisVersion;
	const addChannel = channels.prepare(
		'INSERT INTO channel (sha256, version, name, length, step, sample_s) VALUES (?, ?, ?, ?, ?, ?)'
	);
	const addChunk = channels.prepare('INSERT INTO channel_chunk VALUES (?, ?, ?, ?, ?, ?, ?, ?)');
	channels
		.transaction(() => {
			removeChannels(ledger, sha256, version);
			for (const { name, length, step, sampleS = 1, chunks } of file.channels) {
				addChannel.run(sha256, version, name, length, step, sampleS);
				for (const { level, side, chunk, count, packed } of chunks)
					addChunk.run(sha256, version, name, level, side, chunk, count, packed);
			}
		})
		.immediate();
}

/** Takes away the traces of a source; of all versions when none is named. */
export function removeChannels(ledger: Ledger, sha256: string, version?: number): void {
	ledger.channels
		.prepare('DELETE FROM channel WHERE sha256 = ? AND version = coalesce(?, version)')
		.run(sha256, version ?? null);
}

/** Traces that were written for a ride which then did not come about, and that nobody is about to need. */
export function removeStrayChannels(ledger: Ledger, sha256: string, version: number): void {
	const needed = ledger.database
		.prepare(
			`SELECT 1 FROM ride WHERE sha256 = @sha256 UNION ALL
			SELECT 1 FROM import WHERE sha256 = @sha256 AND stage IN ('waiting', 'analysing')`
		)
		.get({ sha256 });
	if (!needed) removeChannels(ledger, sha256, version);
}

/** Traces of all analysis versions but these; those of older programs cannot be made again. */
export function keepOnlyChannels(ledger: Ledger, versions: readonly number[]): void {
	ledger.channels
		.prepare('DELETE FROM channel WHERE version NOT IN (SELECT value FROM json_each(?))')
		.run(JSON.stringify(versions));
}

/** The sources that have traces of a version; of those named, where some are. */
export function sourcesWithChannels(
	ledger: Ledger,
	version: number,
	named: readonly string[] | null = null
): ReadonlySet<string> {
	const rows = ledger.channels
		.prepare<[object], { sha256: string }>(
			`SELECT DISTINCT sha256 FROM channel WHERE version = @version
			${named ? 'AND sha256 IN (SELECT value FROM json_each(@named))' : ''}`
		)
		.all({ version, ...(named ? { named: JSON.stringify(named) } : {}) });
	return new Set(rows.map(({ sha256 }) => sha256));
}
