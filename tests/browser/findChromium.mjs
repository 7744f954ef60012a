import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser'];

/**
 * The Chromium that the browser tests drive: the one that CHROMIUM_PATH names, else one on PATH.
 *
 * @param {NodeJS.ProcessEnv} env
 * @returns {string | null} absolute path; null when there is none
 */
export function findChromium(env = process.env) {
	const candidates = env.CHROMIUM_PATH
		? [env.CHROMIUM_PATH]
		: (env.PATH ?? '').split(delimiter).flatMap((folder) => NAMES.map((name) => join(folder, name)));
	return candidates.find(isExecutable) ?? null;
}

/** @param {string} file */
function isExecutable(file) {
	try {
		accessSync(file, constants.X_OK);
		return true;
	} catch {
		return false;
	}
}
