import { inverseOfSymmetric } from './inverseOfSymmetric';
import type { FactorKind, FactorRow } from './poissonRegression';

/** Which factors can be estimated, and their scales. */
export interface KeptFactors {
	/** one for each factor */
	readonly kinds: readonly FactorKind[];
	/** the factors that enter the fit */
	readonly places: readonly number[];
	/** of those: mean and standard deviation, weighted by exposure */
	readonly scales: readonly { readonly mean: number; readonly spread: number }[];
}

/** from this inflation of a variance on, factors go along with each other too closely (Marquardt 1970) */
export const MOST_INFLATION = 10;

/**
 * Sorts out factors that no fit can estimate: those that never change, those without an event on one side, and
 * those that go along with others. A factor that is inseparable only from factors already sorted out stays.
 *
 * @param rows counts, exposures above 0 and values, at least one row
 * @returns kinds, and what enters the fit. Inseparable factors enter as one, the first, so that the others are
 *   adjusted for them
 * @example keptFactors(rows).kinds // ['fit', 'inseparable', 'inseparable']
 * Source: variance inflation, Marquardt 1970, Technometrics 12:591 (bound of 10 common practice).
 */
export function keptFactors(rows: readonly FactorRow[]): KeptFactors {
	const factors = (rows[0]?.values ?? []).map((_, factor) => rows.map((row) => row.values[factor]));
	const weights = rows.map((row) => row.exposure);
	const scales = factors.map((values) => scaleOf(values, weights));
	const kinds = factors.map((values, factor): FactorKind => {
		if (!(scales[factor].spread > 1e-12 * Math.max(...values.map(Math.abs)))) return 'constant';
		return hasEventsOnBothSides(values, rows) ? 'fit' : 'unbounded';
	});
	const usable = kinds.flatMap((kind, factor) => (kind === 'fit' ? [factor] : []));
	const scaled = usable.map((factor) =>
		factors[factor].map((value) => (value - scales[factor].mean) / scales[factor].spread)
	);
	const together = inflations(scaled, weights);
	usable.forEach((factor, i) => {
		if (together[i] > MOST_INFLATION) kinds[factor] = 'inseparable';
	});
	const places: number[] = [];
	for (const [i, factor] of usable.entries()) {
		const candidates = [...places, factor].map((place) => scaled[usable.indexOf(place)]);
		if (kinds[factor] === 'fit' || inflations(candidates, weights).every((v) => v <= MOST_INFLATION))
			places.push(usable[i]);
	}
	return { kinds, places, scales: places.map((factor) => scales[factor]) };
}

function scaleOf(values: readonly number[], weights: readonly number[]) {
	const total = weights.reduce((a, b) => a + b, 0);
	const mean = values.reduce((sum, value, r) => sum + weights[r] * value, 0) / total;
	const variance = values.reduce((sum, value, r) => sum + weights[r] * (value - mean) ** 2, 0) / total;
	return { mean, spread: Math.sqrt(variance) };
}

/** a factor of two values needs an event at each; others an event away from either end */
function hasEventsOnBothSides(values: readonly number[], rows: readonly FactorRow[]): boolean {
	const hit = values.filter((_, r) => rows[r].count > 0);
	if (hit.length === 0) return false;
	const [low, high] = [Math.min(...values), Math.max(...values)];
	return hit.some((value) => value < high) && hit.some((value) => value > low);
}

/** how many times the variance of each factor's effect grows because the others go along with it */
function inflations(scaled: readonly (readonly number[])[], weights: readonly number[]): number[] {
	const total = weights.reduce((a, b) => a + b, 0);
	// a trace on the diagonal keeps exact copies from having no inverse: they then show as a huge inflation
	const correlations = scaled.map((a, i) =>
		scaled.map(
			(b, j) => a.reduce((sum, value, r) => sum + weights[r] * value * b[r], 0) / total + (i === j ? 1e-7 : 0)
		)
	);
	const inverse = inverseOfSymmetric(correlations);
	return scaled.map((_, i) => (inverse === null ? Infinity : inverse[i][i]));
}
