import { clusteredCount } from '$lib/reliability/clusteredCount';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import { trendOfRate } from '$lib/reliability/trendOfRate';
import type { WatchedHistory } from '$lib/reliability/watchedHistory';
import { simulateProgramme, type Conditions, type Outing } from './programme';

const HUBS = 3;

/** The outings of each hub one after the other; the events of an outing lie close together in it. */
function historiesOf(outings: readonly Outing[], seed: number): WatchedHistory[] {
	const draw = randomNumbers(seed);
	return Array.from({ length: HUBS }, (_, hub) => {
		let end = 0;
		const events: number[] = [];
		for (const { exposure, count } of outings.filter((__, i) => i % HUBS === hub)) {
			const at = end + exposure * (1 - draw.next());
			for (let i = 0; i < count; i++) events.push(at);
			end += exposure;
		}
		return { windows: [{ from: 0, to: end }], events };
	});
}

/**
 * How often a trend is told although no rate changes with age.
 *
 * @returns shares of programmes in which it was told: events taken for single, and with the scatter of outings
 */
export function trendAlarms(
	conditions: Conditions,
	programmes: number,
	firstSeed: number
): { single: number; scattered: number } {
	let [single, scattered] = [0, 0];
	const told = (histories: readonly WatchedHistory[], dispersion: number) =>
		['rising', 'falling'].includes(trendOfRate(histories, 0.95, dispersion).verdict);
	for (let i = 0; i < programmes; i++) {
		const { outings } = simulateProgramme(firstSeed + i, conditions).fresh;
		const histories = historiesOf(outings, firstSeed + i);
		if (told(histories, 1)) single++;
		if (told(histories, clusteredCount(outings).usedDispersion)) scattered++;
	}
	return { single: single / programmes, scattered: scattered / programmes };
}
