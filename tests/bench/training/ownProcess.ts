import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/**
 * Runs a script of this folder in a process of its own and waits for its end.
 *
 * @param script file name, `learnOne.ts`
 * @param words what it is given
 * @throws Error with the words where it fails
 */
export function inOwnProcess(script: string, words: readonly string[]): Promise<void> {
	const path = fileURLToPath(new URL(`./${script}`, import.meta.url));
	const child = spawn(process.execPath, ['--import', 'tsx', path, ...words], {
		stdio: ['ignore', 'ignore', 'inherit']
	});
	return new Promise((resolve, reject) => {
		child.once('error', reject);
		child.once('exit', (code) =>
			code === 0 ? resolve() : reject(new Error(`${script} ${words.join(' ')} ended with ${code}`))
		);
	});
}
