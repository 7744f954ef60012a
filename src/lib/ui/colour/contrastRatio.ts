import { linearLight } from './linearLight';
import type { Rgba } from './rgbaOf';

/**
 * How well one colour stands out from another, 1 (not at all) to 21 (black on white). Source: WCAG 2.2,
 * definitions of "contrast ratio" and "relative luminance". Text wants 4.5 (criterion 1.4.3), marks and the
 * edges of controls 3 (criterion 1.4.11).
 *
 * @param one @param other full colours; a wash has to be laid over its ground first
 */
export function contrastRatio(one: Rgba, other: Rgba): number {
	const [darker, lighter] = [luminance(one), luminance(other)].sort((a, b) => a - b);
	return (lighter + 0.05) / (darker + 0.05);
}

function luminance([red, green, blue]: Rgba): number {
	return 0.2126 * linearLight(red) + 0.7152 * linearLight(green) + 0.0722 * linearLight(blue);
}
