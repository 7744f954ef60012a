/** One candidate as a scorer left it. */
export interface ScoredCandidate {
	/** log odds from a detector that had not seen the ride */
	readonly logOdds: number;
	/** the feature that is asked about; NaN = cannot be said */
	readonly value: number;
	readonly slip: boolean;
}

/** What a feature would still say. */
export interface SignalLeft {
	/** fall of the deviance when the feature's rank is added to the log odds; one chance value in twenty is above 3.84 */
	readonly gain: number;
	/** change of the log odds from the feature's least to its greatest value; its sign says which way it speaks */
	readonly slope: number;
	readonly candidates: number;
}

const LEAST_CANDIDATES = 50;
const STEPS = 50;
const SETTLED = 1e-5;

/**
 * What a feature tells of slips that the scorer does not know yet: two logistic regressions on the scorer's log odds, one
 * of them with the feature's rank as well, and twice the difference of their log likelihoods (Wilks 1938, Annals of
 * Mathematical Statistics 9). Looks at a feature without a training; a gain on simulated and on real rides of opposite
 * signs is none.
 *
 * @param candidates those near the limit: clear ones say nothing
 * @returns null with fewer than 50 candidates that have the feature, with one kind only, or where all have one value
 */
export function signalLeft(candidates: readonly ScoredCandidate[]): SignalLeft | null {
	const known = candidates.filter(({ value }) => !Number.isNaN(value));
	const slips = known.filter(({ slip }) => slip).length;
	if (known.length < LEAST_CANDIDATES || slips === 0 || slips === known.length) return null;
	const ranks = midRanks(known.map(({ value }) => value));
	if (ranks.every((rank) => rank === ranks[0])) return null;
	const without = fitted(known, null);
	const withRank = fitted(known, ranks);
	return {
		gain: 2 * (withRank.logLikelihood - without.logLikelihood),
		slope: withRank.slope,
		candidates: known.length
	};
}

/** Ranks from -0.5 to 0.5; equal values share the middle of theirs. */
function midRanks(values: readonly number[]): Float64Array {
	const order = values.map((_, i) => i).sort((a, b) => values[a] - values[b]);
	const out = new Float64Array(values.length);
	for (let from = 0; from < order.length;) {
		let to = from;
		while (to + 1 < order.length && values[order[to + 1]] === values[order[from]]) to++;
		for (let k = from; k <= to; k++) out[order[k]] = (from + to) / 2 / (values.length - 1) - 0.5;
		from = to + 1;
	}
	return out;
}

/** Logistic regression by Newton's method, one weight after the other: the log odds hardly depend on the rank, so that few rounds do. */
function fitted(candidates: readonly ScoredCandidate[], ranks: Float64Array | null) {
	const weights = [0, 1, 0];
	const terms = candidates.map(({ logOdds }, i) => [1, logOdds, ranks ? ranks[i] : 0]);
	const chanceOf = (i: number) =>
		1 / (1 + Math.exp(-weights.reduce((sum, w, j) => sum + w * terms[i][j], 0)));
	let moved = Infinity;
	for (let step = 0; step < STEPS && moved > SETTLED; step++) {
		moved = 0;
		for (let j = 0; j < (ranks ? 3 : 2); j++) {
			let gradient = 0;
			let hessian = 1e-9;
			candidates.forEach(({ slip }, i) => {
				const chance = chanceOf(i);
				gradient += terms[i][j] * ((slip ? 1 : 0) - chance);
				hessian += terms[i][j] * terms[i][j] * chance * (1 - chance);
			});
			weights[j] += gradient / hessian;
			moved = Math.max(moved, Math.abs(gradient / hessian));
		}
	}
	let logLikelihood = 0;
	candidates.forEach(({ slip }, i) => {
		const chance = chanceOf(i);
		logLikelihood += Math.log(Math.max(1e-12, slip ? chance : 1 - chance));
	});
	return { logLikelihood, slope: weights[2] };
}
