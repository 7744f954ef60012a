import type { TreeModel } from './treeModel';

/** The scorer of candidates, and how its log odds become the strength of signs. */
export interface ScorerModel extends TreeModel {
	/** log odds of a slip at the stated prevalence = intercept + slope x log odds of the trees */
	readonly strength: {
		readonly intercept: number;
		readonly slope: number;
		readonly slipsPerThousandKm: number;
	};
}
