import { tyreCircumferenceM } from '$lib/hardware/tyreCircumference';
import type { WheelRecord } from './wheels';

/** Circumference that follows from the tyre's size, metres, to start with; null without a size. */
export function startCircumference({ tyreEtrto }: Pick<WheelRecord, 'tyreEtrto'>): number | null {
	const metres = tyreEtrto === null ? NaN : tyreCircumferenceM(tyreEtrto);
	return Number.isNaN(metres) ? null : metres;
}
