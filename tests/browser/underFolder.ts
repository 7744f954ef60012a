import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const PROJECT = fileURLToPath(new URL('../..', import.meta.url));

/** Addresses that a page leads to, loads from or sends to, as they stand in it. */
export function addressesOf(html: string): string[] {
	return [...html.matchAll(/<[a-z][^>]*>/g)]
		.flatMap(([tag]) => [...tag.matchAll(/\s(?:href|src|action|formaction|poster)="([^"]*)"/g)])
		.map(([, address]) => address.replaceAll('&amp;', '&'));
}

/** The build for the prefix takes longer than a start is waited for. */
export function builtForPrefix(): Promise<void> {
	return new Promise((done, fail) => {
		const build = spawn(process.execPath, ['src/cli/build.mjs'], { cwd: PROJECT, stdio: 'ignore' });
		build.once('exit', (code) => (code === 0 ? done() : fail(new Error(`the build ended with ${code}`))));
	});
}
