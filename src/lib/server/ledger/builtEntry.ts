import { join } from 'node:path';
import { folderAboveWith } from './projectFolder';

/**
 * The entry file of a child process that comes from the same build as this program: web app in server/, commands in
 * entries/cli/, child processes beside them.
 *
 * @returns null where nothing was built above this program (development server, unit tests)
 */
export function builtEntry(room: 'jobs' | 'readers', name: string): string | null {
	const entry = join('entries', room, `${name}.js`);
	const folder = folderAboveWith(entry);
	return folder && join(folder, entry);
}
