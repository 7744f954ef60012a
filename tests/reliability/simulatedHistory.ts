import { randomNumbers } from '$lib/reliability/randomNumbers';
import type { WatchedHistory } from '$lib/reliability/watchedHistory';

/** a seeded power-law process, kept where it was watched */
export function simulated(
	seed: number,
	shape: number,
	expected: number,
	windows: readonly { from: number; to: number }[]
): WatchedHistory {
	const draw = randomNumbers(seed);
	const end = Math.max(...windows.map((w) => w.to));
	const events = Array.from({ length: draw.poisson(expected) }, () => end * draw.next() ** (1 / shape));
	return { windows, events: events.filter((t) => t > 0 && windows.some((w) => t > w.from && t <= w.to)) };
}

export const GAPS = [
	{ from: 0, to: 200 },
	{ from: 450, to: 700 },
	{ from: 900, to: 1400 }
];
