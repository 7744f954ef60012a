import type { TreeModel } from './treeModel';

import { REFERENCE_SLIP_CRANK_DEG } from '../analysis';

/** A larger overrun was found no more surely than this one, crank degrees: rest, shift or device hide it then. */
export const FULL_SIZE_DEG = 120;

/** Size of an overrun against the reference slip: ln(size / 90 crank degrees), at most that of the full size. */
export function sizeTerm(crankDeg: number): number {
	return Math.log(Math.min(crankDeg, FULL_SIZE_DEG) / REFERENCE_SLIP_CRANK_DEG);
}

/** Probability that a slip is found, as learned from slips that were put in: log odds = trees + slope x sizeTerm. */
export interface ObservedModel extends TreeModel {
	/** log odds gained per unit of sizeTerm */
	readonly sizeSlope: number;
	/** log odds that a second must reach to be called observed */
	readonly leastLogOdds: number;
}
