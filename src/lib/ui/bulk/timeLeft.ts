const WINDOW_MS = 30_000;
/** an estimate from less than this jumps about */
const SHORTEST_MS = 2_000;

/**
 * Tells how long the rest will take, from what was sent in the last half minute.
 *
 * @param nowMs a clock
 */
export function timeLeft(nowMs: () => number) {
	let samples: { atMs: number; bytes: number }[] = [];
	let sinceMs = nowMs();
	return {
		/** after a pause what was before says nothing */
		restart(): void {
			samples = [];
			sinceMs = nowMs();
		},
		add(bytes: number): void {
			const atMs = nowMs();
			samples.push({ atMs, bytes });
			const from = samples.findIndex((sample) => sample.atMs > atMs - WINDOW_MS);
			if (from > 0) samples.splice(0, from);
		},
		/** seconds; null while too little is known, where nothing came through in the last half minute, and where nothing is left */
		leftS(bytes: number): number | null {
			const fromMs = Math.max(sinceMs, nowMs() - WINDOW_MS);
			const spanMs = nowMs() - fromMs;
			const sent = samples.reduce((sum, { atMs, bytes }) => sum + (atMs > fromMs ? bytes : 0), 0);
			if (spanMs < SHORTEST_MS || sent <= 0 || bytes <= 0) return null;
			return (bytes / sent) * (spanMs / 1000);
		}
	};
}
