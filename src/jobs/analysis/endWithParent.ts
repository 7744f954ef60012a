import { Worker } from 'node:worker_threads';

/** Looks once a second whether the parent is still the one that started us; runs beside a busy main thread. */
const WATCH = `
const { workerData: parent } = require('node:worker_threads');
setInterval(() => process.ppid === parent || process.kill(process.pid, 'SIGKILL'), 1000);
`;

/**
 * Ends this process when its parent is gone, even in the middle of a file that never ends: the news of a
 * closed channel would wait until the main thread is free, which may be never. Stopping by Ctrl+C, which a
 * terminal sends to everybody, is left to the parent.
 *
 * @param parent process id of the parent, from itself: who asks the system later may be told the next one
 */
export function endWithParent(parent: number): void {
	process.on('SIGINT', () => {});
	process.on('disconnect', () => process.exit(0));
	new Worker(WATCH, {
		eval: true,
		workerData: parent,
		resourceLimits: { maxOldGenerationSizeMb: 16 }
	}).unref();
}
