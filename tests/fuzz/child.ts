/**
 * Runs cases of the fuzz test in one process: numbers come from the parent, one range a message. Before each case
 * its number is said, so that the parent knows which one hung or ended the process.
 */
import { familyOf } from './families';
import { seeded } from './seeded';

process.on('unhandledRejection', (error) => {
	process.send?.({ kind: 'broke', number: current, detail: `unhandled: ${detailOf(error)}` });
});
let current = -1;

process.on('message', ({ from, to }: { from: number; to: number }) => void run(from, to));

async function run(from: number, to: number): Promise<void> {
	for (current = from; current < to; current++) {
		if ((current - from) % 20 === 0) process.send?.({ kind: 'at', number: current });
		const startedMs = performance.now();
		try {
			await familyOf(current).run(seeded(current));
		} catch (error) {
			process.send?.({ kind: 'broke', number: current, detail: detailOf(error) });
		}
		const tookMs = performance.now() - startedMs;
		if (tookMs > 1000) process.send?.({ kind: 'slow', number: current, tookMs });
	}
	// what was rejected late is heard before the end is said
	await new Promise((resolve) => setImmediate(resolve));
	process.send?.({ kind: 'done', to });
}

function detailOf(error: unknown): string {
	return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
