import type { ChartFormats } from './strip';

/**
 * What the grid of the gained angle stands for, in words.
 *
 * @param every steps from line to line; null = the grid counts degrees
 * @param stepHubDeg hub degrees of one engagement step; null = not known, undefined = steps are not spoken of
 * @example stepGridWords(5, 15, formats) // " (grid: every 5 engagement steps of 15°)"
 */
export function stepGridWords(
	every: number | null,
	stepHubDeg: number | null | undefined,
	formats: Pick<ChartFormats, 'set'>
): string {
	if (stepHubDeg === undefined) return '';
	if (!stepHubDeg) return ' (the build does not say how large one engagement step is)';
	const size = `${formats.set(stepHubDeg, 1)}°`;
	return every === 1
		? ` (grid: one engagement step, ${size})`
		: ` (grid: every ${every} engagement steps of ${size})`;
}
