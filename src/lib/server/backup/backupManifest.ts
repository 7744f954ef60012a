import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { LedgerRefusal } from '../refusal';

export const BACKUP_FORMAT = 'slip-ledger backup';
export const BACKUP_FORMAT_VERSION = 1;

/** kept = its bytes lie in the backup; missing, damaged = they were so in the store; erased = a tombstone stands */
export type BackupSourceState = 'kept' | 'missing' | 'damaged' | 'erased';

export interface BackupSource {
	readonly sha256: string;
	readonly bytes: number;
	readonly state: BackupSourceState;
}

/** What one generation of a backup holds; it is written last, so a folder without one is no generation. */
export interface BackupManifest {
	readonly format: typeof BACKUP_FORMAT;
	readonly formatVersion: number;
	/** number of the ledger's last migration */
	readonly layout: number;
	/** ISO 8601 in UTC */
	readonly madeAt: string;
	readonly ledger: { readonly bytes: number; readonly sha256: string };
	readonly sources: readonly BackupSource[];
}

const HASH = /^[0-9a-f]{64}$/;
const STATES: readonly string[] = ['kept', 'missing', 'damaged', 'erased'] satisfies BackupSourceState[];

/**
 * Reads the manifest of one generation; nothing in it is believed before it was looked at.
 *
 * @throws LedgerRefusal wrong-value when there is none or it is damaged; newer-ledger
 */
export function readBackupManifest(generation: string): BackupManifest {
	let manifest: BackupManifest;
	try {
		manifest = JSON.parse(readFileSync(join(generation, 'manifest.json'), 'utf8')) as BackupManifest;
	} catch {
		throw noBackup('its manifest is missing or cannot be read');
	}
	if (manifest?.format !== BACKUP_FORMAT) throw noBackup('it does not say that it is one');
	if (!Number.isInteger(manifest.formatVersion) || manifest.formatVersion > BACKUP_FORMAT_VERSION)
		throw new LedgerRefusal(
			'newer-ledger',
			'This backup was made by a newer Slip Ledger; nothing was changed. Update the program.'
		);
	const sound =
		Number.isInteger(manifest.layout) &&
		manifest.layout > 0 &&
		HASH.test(manifest.ledger?.sha256) &&
		Array.isArray(manifest.sources) &&
		manifest.sources.every(
			(source) =>
				HASH.test(source?.sha256) && Number.isSafeInteger(source.bytes) && STATES.includes(source.state)
		);
	if (!sound) throw noBackup('its manifest is damaged');
	return manifest;
}

export function noBackup(why: string): LedgerRefusal {
	return new LedgerRefusal('wrong-value', `This is no backup of a Slip Ledger: ${why}. Nothing was changed.`);
}
