import type { StackElement } from '$lib/hardware/stackElement';

/** An element with a nominal length and nothing else unless told. */
export function element(
	side: StackElement['side'],
	nominalMm: number,
	more: Partial<StackElement> = {}
): StackElement {
	return {
		label: `${side} ${nominalMm}`,
		side,
		nominalMm,
		minusMm: 0,
		plusMm: 0,
		measuredMm: null,
		inEngagement: 0,
		inEndFloat: 0,
		...more
	};
}
