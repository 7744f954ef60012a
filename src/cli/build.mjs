import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { stampOfSources } from './stampOfSources.mjs';

const project = fileURLToPath(new URL('../..', import.meta.url));
const builds = join(project, 'build');
const lock = join(builds, 'lock');

const KEPT_BUILDS = 3;
const LOCK_IS_STALE_AFTER_MS = 10 * 60 * 1000;

/**
 * The folder of the build that belongs to the sources as they are now; builds it when there is none. Each
 * build lies in a folder named by its stamp and is never changed afterwards, so that a running server and
 * a terminal command never pull files from under each other. Messages go to stderr.
 *
 * @returns {Promise<string>} absolute path with handler.js (web app) and entries/ (commands and jobs)
 */
export async function ensureBuild() {
	const folder = join(builds, stampOfSources(project));
	if (existsSync(folder)) return folder;
	await takeLock();
	try {
		if (!existsSync(folder)) makeBuild(folder);
	} finally {
		rmSync(lock, { recursive: true, force: true });
	}
	return folder;
}

async function takeLock() {
	mkdirSync(builds, { recursive: true });
	for (;;) {
		try {
			mkdirSync(lock);
			return;
		} catch (error) {
			if (/** @type {NodeJS.ErrnoException} */ (error).code !== 'EEXIST') throw error;
			const age = Date.now() - (statSync(lock, { throwIfNoEntry: false })?.mtimeMs ?? 0);
			if (age > LOCK_IS_STALE_AFTER_MS) rmSync(lock, { recursive: true, force: true });
			else await new Promise((resolve) => setTimeout(resolve, 200));
		}
	}
}

/** @param {string} folder */
function makeBuild(folder) {
	process.stderr.write('Building Slip Ledger (sources are new or have changed; about half a minute) ...\n');
	const partial = `${folder}.partial`;
	rmSync(partial, { recursive: true, force: true });
	const vite = join(project, 'node_modules/vite/bin/vite.js');
	for (const mode of ['production', 'entries']) {
		const run = spawnSync(process.execPath, [vite, 'build', '--mode', mode, '--logLevel', 'warn'], {
			cwd: project,
			env: { ...process.env, SLIP_LEDGER_BUILD_FOLDER: partial, NODE_ENV: 'production' },
			encoding: 'utf8'
		});
		if (run.status !== 0) {
			process.stderr.write(`${run.stdout}${run.stderr}\n`);
			throw new Error('the build failed; what the build tool said stands above');
		}
	}
	writeFileSync(join(partial, 'package.json'), '{ "type": "module" }\n');
	renameSync(partial, folder);
	removeOldBuilds();
}

function removeOldBuilds() {
	const finished = readdirSync(builds)
		.filter((name) => /^[0-9a-f]{16}$/.test(name))
		.map((name) => ({ name, at: statSync(join(builds, name)).mtimeMs }))
		.sort((a, b) => b.at - a.at);
	for (const { name } of finished.slice(KEPT_BUILDS))
		rmSync(join(builds, name), { recursive: true, force: true });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
	ensureBuild().then(
		(folder) => process.stdout.write(`${folder}\n`),
		(error) => {
			process.stderr.write(`${error.message}\n`);
			process.exitCode = 1;
		}
	);
}
