import { createInterface } from 'node:readline';

const ENTER = /^[\r\n]$/;
const BACK = /^[\b\x7f]$/;
/** what the keys Ctrl-C and Ctrl-D send */
const CANCEL: ReadonlySet<string> = new Set(['\u0003', '\u0004']);

/**
 * A password from the terminal, which does not show it, or the first line of what is piped in.
 *
 * @param question what to ask at a terminal
 * @returns null when it was broken off
 */
export async function readSecret(question: string): Promise<string | null> {
	if (!process.stdin.isTTY) {
		for await (const line of createInterface({ input: process.stdin })) return line;
		return null;
	}
	process.stderr.write(question);
	const { stdin } = process;
	stdin.setRawMode(true);
	stdin.setEncoding('utf8');
	stdin.resume();
	try {
		return await new Promise((resolve) => {
			let typed = '';
			stdin.on('data', (text: string) => {
				for (const sign of text) {
					if (ENTER.test(sign)) return resolve(typed);
					if (CANCEL.has(sign)) return resolve(null);
					typed = BACK.test(sign) ? [...typed].slice(0, -1).join('') : typed + sign;
				}
			});
		});
	} finally {
		stdin.removeAllListeners('data');
		stdin.setRawMode(false);
		stdin.pause();
		process.stderr.write('\n');
	}
}
