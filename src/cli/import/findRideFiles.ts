import { LedgerRefusal } from '$lib/server';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

const RIDE_FILE = /\.((fit|tcx|gpx|csv)(\.gz)?|zip)$/i;

/**
 * The ride files that a path stands for: a file named by itself whatever it is called; of a folder, all
 * below it that are called like ride files or archives of them, in order of name. Hidden ones and links are left alone.
 *
 * @throws LedgerRefusal not-found
 */
export function findRideFiles(path: string): string[] {
	const found = statSync(path, { throwIfNoEntry: false });
	if (!found) throw new LedgerRefusal('not-found', `There is no file or folder ${path}.`);
	return found.isDirectory() ? inFolder(path) : [path];
}

function inFolder(folder: string): string[] {
	return readdirSync(folder, { withFileTypes: true })
		.filter((entry) => !entry.name.startsWith('.'))
		.sort((a, b) => (a.name < b.name ? -1 : 1))
		.flatMap((entry) => {
			const path = join(folder, entry.name);
			if (entry.isDirectory()) return inFolder(path);
			return entry.isFile() && RIDE_FILE.test(entry.name) ? [path] : [];
		});
}
