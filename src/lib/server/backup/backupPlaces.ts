import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { noBackup } from './backupManifest';

/** folder of the dated ledgers in a backup folder */
export const LEDGERS = 'ledgers';
/** a generation that is being written; without its date it is none yet */
export const PARTIAL = 'partial-';
/** hashes of erased sources: an earlier generation does not bring them back */
export const ERASED_LIST = 'erased.json';

const GENERATION = /^\d{4}-\d{2}-\d{2}T\d{6}Z(-\d+)?$/;

/** Name of a generation: its instant in UTC, sorts by time, and every file system takes it. */
export function generationName(ms: number): string {
	return `${new Date(ms).toISOString().slice(0, 19).replaceAll(':', '')}Z`;
}

/** Names of the finished generations in a backup folder, the oldest first. */
export function listGenerations(folder: string): string[] {
	const ledgers = join(folder, LEDGERS);
	if (!existsSync(ledgers)) return [];
	return readdirSync(ledgers)
		.filter((name) => GENERATION.test(name) && existsSync(join(ledgers, name, 'manifest.json')))
		.sort(byTime);
}

function byTime(a: string, b: string): number {
	const [instantA, instantB] = [a.slice(0, 18), b.slice(0, 18)];
	if (instantA !== instantB) return instantA < instantB ? -1 : 1;
	return Number(a.slice(19)) - Number(b.slice(19));
}

/**
 * The generation that a path means: the newest of a backup folder, or the one that it names.
 *
 * @throws LedgerRefusal wrong-value when there is none
 */
export function findGeneration(path: string): { folder: string; generation: string } {
	if (GENERATION.test(basename(path))) return { folder: dirname(dirname(path)), generation: path };
	const newest = listGenerations(path).at(-1);
	if (!newest) throw noBackup('there is no dated ledger in it');
	return { folder: path, generation: join(path, LEDGERS, newest) };
}
