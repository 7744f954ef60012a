const STEPS_S = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200];

/**
 * Round times for an axis of hours, minutes and seconds.
 *
 * @param window seconds [from, to]
 * @param most how many labels fit, >= 1
 * @example timeTicks([0, 90], 4) // [0, 30, 60, 90]
 */
export function timeTicks(window: readonly [number, number], most: number): number[] {
	const step =
		STEPS_S.find((seconds) => (window[1] - window[0]) / seconds <= most) ?? STEPS_S[STEPS_S.length - 1];
	const ticks: number[] = [];
	for (let k = Math.ceil(window[0] / step); k * step <= window[1]; k++) ticks.push(k * step);
	return ticks;
}
