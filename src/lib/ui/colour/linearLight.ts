/**
 * The light that a value of an sRGB channel stands for (IEC 61966-2-1; WCAG 2.2 prints 0.04045 as well).
 *
 * @param channel 0 to 1; @returns 0 to 1
 */
export function linearLight(channel: number): number {
	return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
}
