import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { builtEntry } from '../ledger/builtEntry';
import { folderAboveWith } from '../ledger/projectFolder';

/**
 * The entry file of the child process that analyses. It comes from the same build as this program and
 * lies above it: web app in server/, commands in entries/cli/, the job in entries/jobs/. The development
 * server is not built: it takes the newest build there is. SLIP_LEDGER_ANALYSE_FILE names another one.
 */
export function analyseFileEntry(): string {
	return process.env.SLIP_LEDGER_ANALYSE_FILE || jobEntry('analyseFile');
}

/** The entry file of the child process that unpacks archives, found in the same way. */
export function unpackArchiveEntry(): string {
	return jobEntry('unpackArchive');
}

function jobEntry(job: string): string {
	const file = join('entries', 'jobs', `${job}.js`);
	const built = builtEntry('jobs', job);
	if (built) return built;
	const project = folderAboveWith('build');
	const entries = (project ? readdirSync(join(project, 'build')) : [])
		.map((name) => join(project ?? '', 'build', name, file))
		.filter((path) => existsSync(path))
		.sort((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs);
	if (entries.length === 0)
		throw new Error(`the child process "${job}" was not built yet; run "npm run build" once`);
	return entries[0];
}
