import type { Formats } from '$lib/ui/formats';

/**
 * How long a plan takes at the pace so far, a sentence.
 *
 * @param weeks more than 0; null = the pace is not known
 */
export function weeksWords(weeks: number | null, formats: Pick<Formats, 'number'>): string {
	if (weeks === null) return 'The pace is not known yet, so weeks cannot be told.';
	const whole = Math.round(weeks);
	const time =
		whole < 1 ? 'less than a week' : whole === 1 ? 'about a week' : `about ${formats.number(whole)} weeks`;
	return `At the pace so far it takes ${time}.`;
}
