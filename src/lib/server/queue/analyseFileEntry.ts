import { join } from 'node:path';
import { folderAboveWith } from '../ledger/projectFolder';

const ENTRY = join('entries', 'jobs', 'analyseFile.js');

/**
 * The entry file of the child process that analyses. It comes from the same build as this program and
 * lies above it: web app in server/, commands in entries/cli/, the job in entries/jobs/.
 * SLIP_LEDGER_ANALYSE_FILE names another one (tests, development server).
 */
export function analyseFileEntry(): string {
	const chosen = process.env.SLIP_LEDGER_ANALYSE_FILE;
	if (chosen) return chosen;
	const folder = folderAboveWith(ENTRY);
	if (!folder) throw new Error('the child process of the analysis was not built; run "npm run build"');
	return join(folder, ENTRY);
}
