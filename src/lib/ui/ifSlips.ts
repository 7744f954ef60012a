import type { Formats } from './formats';

/**
 * The condition that a sentence about counted events stands under while some of them are not reviewed; "" when all are.
 *
 * @example ifSlips(1, formats) // ", if the event that is not reviewed is a slip"
 */
export function ifSlips(unreviewed: number, formats: Pick<Formats, 'number'>): string {
	if (unreviewed === 0) return '';
	return unreviewed === 1
		? ', if the event that is not reviewed is a slip'
		: `, if the ${formats.number(unreviewed)} events that are not reviewed are slips`;
}
