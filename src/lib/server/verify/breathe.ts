const LONGEST_PAUSE_MS = 100;

/**
 * Gives way after a piece of work for as long as the work took (at most 0.1 s), so that checking takes at most
 * half of a disk's and a processor's time.
 */
export async function breathe(startedMs: number): Promise<void> {
	const pauseMs = Math.min(LONGEST_PAUSE_MS, performance.now() - startedMs);
	await new Promise((resolve) => setTimeout(resolve, pauseMs));
}
