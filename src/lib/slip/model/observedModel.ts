import type { TreeModel } from './treeModel';

/** Probability that a slip is found, as learned from slips that were put in: log odds = trees + slope x size. */
export interface ObservedModel extends TreeModel {
	/** log odds gained per unit of ln(overrun / 90 crank degrees) */
	readonly sizeSlope: number;
	/** log odds that a second must reach to be called observed */
	readonly leastLogOdds: number;
}
