import { factorWords, type FactorFigures, type FactorWords } from './factorWords';
import type { Formats } from './formats';

export interface FactorGroups {
	/** circumstances with a figure, one row each */
	readonly told: readonly FactorWords[];
	/** all others by the reason why there is none: "too few slips to say: wet instead of dry; ..." */
	readonly untold: readonly { readonly why: string; readonly steps: readonly string[] }[];
}

/** What can be said apart from what cannot, so that a page does not repeat the same reason row by row. */
export function factorGroups(
	factors: readonly FactorFigures[],
	referenceRider: string | null,
	formats: Formats
): FactorGroups {
	const words = factors.map((factor) => ({ factor, words: factorWords(factor, referenceRider, formats) }));
	const without = words.filter(({ factor }) => factor.kind !== 'fit').map(({ words }) => words);
	return {
		told: words.filter(({ factor }) => factor.kind === 'fit').map(({ words }) => words),
		untold: [...new Set(without.map(({ effect }) => effect))].map((why) => ({
			why,
			steps: without.filter(({ effect }) => effect === why).map(({ step }) => step)
		}))
	};
}
