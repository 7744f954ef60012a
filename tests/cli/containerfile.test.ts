import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

/**
 * The container file cannot be built where these tests run, for want of a container engine. What can be held without one:
 * that what it copies, runs and promises is there, under the names that the project and its README use.
 */
const PROJECT = fileURLToPath(new URL('../..', import.meta.url));
const read = (file: string) => readFileSync(join(PROJECT, file), 'utf8');
const scripts = (JSON.parse(read('package.json')) as { scripts: Record<string, string> }).scripts;

/** Instructions with their words; lines that go on are joined, comments left out. */
const instructions = read('src/deploy/Containerfile')
	.replace(/^\s*#.*$/gm, '')
	.replace(/\\\n/g, ' ')
	.split('\n')
	.map((line) => line.trim())
	.filter((line) => line !== '')
	.map((line) => ({ name: line.split(' ')[0], words: line.replace(/^\S+\s+/, '') }));
const all = (name: string) => instructions.filter((one) => one.name === name).map(({ words }) => words);

describe('the container file', () => {
	it('copies only what is there, and from stages that it names', () => {
		const stages = all('FROM').flatMap((words) => / AS (\S+)/.exec(words)?.[1] ?? []);
		for (const words of all('COPY')) {
			const from = /--from=(\S+)/.exec(words)?.[1];
			if (from) expect(stages).toContain(from);
			else
				for (const source of words.split(/\s+/).slice(0, -1))
					expect(existsSync(join(PROJECT, source)), source).toBe(true);
		}
	});

	it('runs by the very Node that built it: another version would look for a build of its own, and find no tools', () => {
		const stages = instructions.flatMap(({ name }, i) => (name === 'FROM' ? [i] : []));
		expect(stages).toHaveLength(2);
		const runtime = instructions.slice(stages[1]);
		expect(runtime).toContainEqual({
			name: 'COPY',
			words: '--from=build /usr/local/bin/node /usr/local/bin/node'
		});
		expect(read('src/cli/stampOfSources.mjs')).toContain('process.version');
	});

	it('leaves out of the build what must not be copied into it', () => {
		const ignored = read('.dockerignore').split('\n');
		for (const folder of ['node_modules', 'build', 'data', '.git']) expect(ignored).toContain(folder);
	});

	it('runs scripts that package.json has, and starts by the file that npm start starts', () => {
		const ran = all('RUN').flatMap((words) =>
			[...words.matchAll(/npm run ([\w:-]+)/g)].map(([, name]) => name)
		);
		expect(ran).toContain('build');
		for (const name of ran) expect(Object.keys(scripts)).toContain(name);
		const started = JSON.parse(all('CMD').at(-1)!) as string[];
		expect(started.join(' ')).toBe(scripts.start);
		expect(existsSync(join(PROJECT, started.at(-2)!))).toBe(true);
	});

	it('keeps what production needs: nothing but native parts is left after pruning', () => {
		const { dependencies, engines } = JSON.parse(read('package.json')) as {
			dependencies: Record<string, string>;
			engines: { node: string };
		};
		// everything else is bundled by the build
		expect(Object.keys(dependencies)).toEqual(['better-sqlite3']);
		const major = /(\d+)/.exec(engines.node)![1];
		for (const words of all('FROM')) expect(words).toContain(`/node:${major}-`);
	});

	it('sets only variables that the program knows, and watches an address that it answers', () => {
		const guide = read('DEVELOPERS.md');
		const variables = all('ENV').flatMap((words) => [...words.matchAll(/(\w+)=/g)].map(([, name]) => name));
		for (const name of variables.filter((name) => name !== 'NODE_ENV'))
			expect(guide, name).toContain(`| \`${name}\``);
		const watched =
			/127\.0\.0\.1:\$\{process\.env\.PORT\}\$\{process\.env\.SLIP_LEDGER_PREFIX\}(\/[\w.]+)/.exec(
				all('HEALTHCHECK').join()
			)![1];
		expect(existsSync(join(PROJECT, 'src/routes', watched, '+server.ts'))).toBe(true);
		const data = /SLIP_LEDGER_DATA=(\S+)/.exec(all('ENV').join(' '))![1];
		expect(all('VOLUME')).toEqual([data]);
		expect(all('EXPOSE')).toEqual([/\bPORT=(\d+)/.exec(all('ENV').join(' '))![1]]);
	});

	it('is named by the README as it lies', () => {
		expect(read('README.md')).toContain('src/deploy');
		expect(read('src/deploy/Containerfile')).toContain('-f src/deploy/Containerfile');
		// nobody but the user of the container writes, and only into the volume
		expect(all('USER')).toEqual(['node']);
	});
});
