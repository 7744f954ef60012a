import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readPrefix } from './readPrefix.mjs';

/** what a build depends on: when any of it changes, the next command builds anew */
const STAMPED = [
	'src',
	'static',
	'sample-rides/generate.ts',
	'sample-rides/generator',
	'sample-rides/workshop',
	// shown on the method page
	'tests/bench/detection-figures.md',
	'package.json',
	'package-lock.json',
	'svelte.config.js',
	'tsconfig.json',
	'vite.config.ts'
];

/**
 * What tells one state of the sources from another.
 *
 * @param {string} project folder of the project
 * @param {Readonly<Record<string, string | undefined>>} [env]
 * @returns {string} first 16 hex digits of SHA-256 over names and contents of all that is built, the version of
 *   Node that builds it and the prefix that is built in
 * @throws {Error} with a sentence, for a prefix that is none
 */
export function stampOfSources(project, env = process.env) {
	const hash = createHash('sha256').update(process.version).update(readPrefix(env));
	for (const path of STAMPED) addToHash(hash, project, path);
	return hash.digest('hex').slice(0, 16);
}

/**
 * @param {import('node:crypto').Hash} hash
 * @param {string} project
 * @param {string} path relative to the project
 */
function addToHash(hash, project, path) {
	const absolute = join(project, path);
	if (!existsSync(absolute)) return;
	if (statSync(absolute).isDirectory()) {
		for (const name of readdirSync(absolute).sort()) addToHash(hash, project, `${path}/${name}`);
	} else {
		hash.update(`${path}\0`).update(readFileSync(absolute)).update('\0');
	}
}
