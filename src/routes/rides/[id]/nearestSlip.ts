import type { SlipMark } from '$lib/charts/strip';

/**
 * The event at or near an instant.
 *
 * @param nearS seconds that it may begin later or end earlier
 * @returns the one whose onset is nearest; undefined when there is none
 */
export function nearestSlip(slips: readonly SlipMark[], atS: number, nearS: number): SlipMark | undefined {
	return slips
		.filter(({ startS, endS }) => atS >= startS - nearS && atS <= endS + nearS)
		.sort((a, b) => Math.abs(a.startS - atS) - Math.abs(b.startS - atS))[0];
}

/**
 * The event before (-1) or after (+1) the open one; without an open one, before or after an instant.
 *
 * @param slips in order of time
 */
export function neighbourSlip(
	slips: readonly SlipMark[],
	openId: number | null,
	atS: number,
	side: -1 | 1
): SlipMark | undefined {
	const open = slips.findIndex(({ id }) => id === openId);
	if (open >= 0) return slips[open + side];
	return side === 1 ? slips.find(({ startS }) => startS > atS) : slips.findLast(({ startS }) => startS < atS);
}
