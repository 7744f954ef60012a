import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { folderAboveWith } from '../ledger/projectFolder';

const ENTRY = join('entries', 'jobs', 'analyseFile.js');

/**
 * The entry file of the child process that analyses. It comes from the same build as this program and
 * lies above it: web app in server/, commands in entries/cli/, the job in entries/jobs/. The development
 * server is not built: it takes the newest build there is. SLIP_LEDGER_ANALYSE_FILE names another one.
 */
export function analyseFileEntry(): string {
	const chosen = process.env.SLIP_LEDGER_ANALYSE_FILE;
	if (chosen) return chosen;
	const folder = folderAboveWith(ENTRY);
	if (folder) return join(folder, ENTRY);
	const project = folderAboveWith('build');
	const entries = (project ? readdirSync(join(project, 'build')) : [])
		.map((name) => join(project ?? '', 'build', name, ENTRY))
		.filter((path) => existsSync(path))
		.sort((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs);
	if (entries.length === 0)
		throw new Error('the child process of the analysis was not built yet; run "npm run build" once');
	return entries[0];
}
