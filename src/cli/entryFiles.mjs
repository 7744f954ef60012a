import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const source = fileURLToPath(new URL('..', import.meta.url));

/**
 * The entry files of the terminal commands and of the child processes: every .ts file that lies directly
 * in src/cli, src/jobs or src/readers and is named as the command, job or reader it is.
 *
 * @returns {Record<string, string>} output name without ending (cli/slips, jobs/analyseFile) -> source file
 */
export function entryFiles() {
	/** @type {Record<string, string>} */
	const entries = {};
	for (const room of ['cli', 'jobs', 'readers']) {
		for (const file of readdirSync(`${source}/${room}`)) {
			if (file.endsWith('.ts')) entries[`${room}/${file.slice(0, -3)}`] = `${source}/${room}/${file}`;
		}
	}
	return entries;
}
