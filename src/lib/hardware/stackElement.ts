/**
 * Where an axial element lies. The first three stand between the locknut or end-cap faces and make the
 * over-locknut distance; the others do not.
 */
export const STACK_SIDES = ['left', 'hub', 'right', 'inside the hub', 'behind the cassette'] as const;
export type StackSide = (typeof STACK_SIDES)[number];

/** What a thicker element does to a chain: takes from it, nothing, adds to it. */
export type ChainSign = -1 | 0 | 1;

/** One axial element; lengths in millimetres, tolerances as amounts that are never negative. */
export interface StackElement {
	readonly label: string;
	readonly side: StackSide;
	/** the drawing's length, 0 to 300 mm */
	readonly nominalMm: number;
	/** how much shorter it may be, >= 0 mm */
	readonly minusMm: number;
	/** how much longer it may be, >= 0 mm */
	readonly plusMm: number;
	/** null = not measured */
	readonly measuredMm: number | null;
	readonly inEngagement: ChainSign;
	readonly inEndFloat: ChainSign;
}

/** Whether an element is part of the over-locknut distance. */
export function liesBetweenFaces(side: StackSide): boolean {
	return side === 'left' || side === 'hub' || side === 'right';
}
