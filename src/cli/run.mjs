// Starts a terminal command from the build: node src/cli/run.mjs NAME [arguments]. Builds first when
// sources or lock file have changed since.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureBuild } from './build.mjs';

const [name, ...rest] = process.argv.slice(2);

try {
	if (!name || !/^[a-z-]+$/.test(name)) throw new Error('usage: node src/cli/run.mjs COMMAND [arguments]');
	const entry = join(await ensureBuild(), 'entries', 'cli', `${name}.js`);
	if (!existsSync(entry)) throw new Error(`there is no command "${name}"`);
	process.argv = [process.argv[0], entry, ...rest];
	await import(pathToFileURL(entry).href);
} catch (error) {
	process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
	process.exitCode = 1;
}
