import type { Formats } from './formats';

/** From here on more than half of such events are slips, at the prevalence the figure is calibrated for. */
export const CLEAR_FROM = 0.5;
/** From here on at least nine in ten are. */
export const STRONG_FROM = 0.9;

/**
 * The strength of signs as a plain figure with a word: a percentage would read as the chance that the event
 * is a slip, which it is not. The word belongs to the figure as it is printed.
 *
 * @param strength 0 to 1; never printed as 0 or 1, since no recording is certain
 * @returns "not known" without a word for NaN
 * @example strengthWords(0.42, formats) // { figure: '0.42', word: 'weak' }
 */
export function strengthWords(
	strength: number,
	formats: Pick<Formats, 'number'>
): { readonly figure: string; readonly word: 'weak' | 'clear' | 'strong' | '' } {
	if (Number.isNaN(strength)) return { figure: formats.number(strength), word: '' };
	const printed = Math.min(0.99, Math.max(0.01, Math.round(100 * strength) / 100));
	const word = printed >= STRONG_FROM ? 'strong' : printed >= CLEAR_FROM ? 'clear' : 'weak';
	return { figure: formats.number(printed, 2), word };
}
