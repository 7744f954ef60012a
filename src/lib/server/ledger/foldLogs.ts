import { Worker } from 'node:worker_threads';
import { log } from '../log/log';
import type { Ledger } from './openLedger';

const EVERY_MS = 1000;
/** where this thread folds, the others do so only when the log has grown far: pages of 4 KB */
const BACKSTOP_PAGES = 8000;
const USUAL_PAGES = 1000;

/**
 * Opens a database only to fold its log, and only when something was written since: who is the last to close it takes
 * the log away, and that should be the program itself.
 */
const FOLD = `
const { workerData: { files, base, everyMs }, parentPort } = require('node:worker_threads');
const { statSync } = require('node:fs');
const Database = require('node:module').createRequire(base)('better-sqlite3');
const folded = new Map();
const writtenAt = (file) => statSync(file + '-wal', { throwIfNoEntry: false })?.mtimeMs;
setInterval(() => {
	for (const file of files) {
		const at = writtenAt(file);
		if (at === undefined || at === folded.get(file)) continue;
		try {
			const database = new Database(file, { fileMustExist: true, timeout: 100 });
			database.pragma('synchronous = NORMAL');
			database.pragma('wal_checkpoint(PASSIVE)');
			database.close();
			folded.set(file, at);
		} catch {
			// busy or full: the next look tries again
		}
	}
}, everyMs);
parentPort.postMessage('folds');
`;

/**
 * Has a thread bring what was written from the logs of both databases into the databases themselves, which a commit
 * does every thousand pages otherwise: two waits for the disk and some megabytes, during which no page is answered.
 *
 * @returns ends the thread
 */
export function foldLogs(ledger: Ledger, everyMs = EVERY_MS): () => void {
	const databases = [ledger.database, ledger.channels];
	const leaveTo = (pages: number) => {
		for (const database of databases) if (database.open) database.pragma(`wal_autocheckpoint = ${pages}`);
	};
	const thread = new Worker(FOLD, {
		eval: true,
		workerData: { files: databases.map(({ name }) => name), base: import.meta.url, everyMs },
		resourceLimits: { maxOldGenerationSizeMb: 16, maxYoungGenerationSizeMb: 2 }
	});
	thread.unref();
	thread.once('message', () => leaveTo(BACKSTOP_PAGES));
	thread.once('error', (error) => log.failure('logs not folded', error));
	thread.once('exit', () => leaveTo(USUAL_PAGES));
	return () => void thread.terminate();
}
