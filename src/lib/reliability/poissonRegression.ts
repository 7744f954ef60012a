import { checkConfidence, checkCount, checkFinite, checkPositive } from './checks';
import { keptFactors, type KeptFactors } from './keptFactors';
import { logLinearSummit } from './logLinearSummit';
import { normalAbove } from './normalAbove';
import { normalQuantile } from './normalQuantile';

/** Events over an exposure under circumstances given as numbers (0 or 1 for a circumstance that holds or not). */
export interface FactorRow {
	readonly count: number;
	/** > 0 */
	readonly exposure: number;
	readonly values: readonly number[];
}

/**
 * `fit`: estimated. `unbounded`: no event on one side of it, so no finite ratio. `inseparable`: it goes along with
 * another factor, and the data cannot tell which of them it is. `constant`: it never changes.
 */
export type FactorKind = 'fit' | 'unbounded' | 'inseparable' | 'constant';

export interface FactorEffect {
	readonly kind: FactorKind;
	/** times the rate for one more unit of the factor, the others held; NaN unless `fit` */
	readonly ratio: number;
	readonly lower: number;
	readonly upper: number;
	/** two-sided p-value of "no influence", before any correction for many questions; NaN unless `fit` */
	readonly pValue: number;
}

export interface PoissonRegression {
	readonly events: number;
	/** rate with all factors at 0; NaN when nothing was fitted */
	readonly baseRate: number;
	/** one for each factor, in the order of the values */
	readonly effects: readonly FactorEffect[];
	/** common practice asks for ten events or more a factor (Peduzzi 1996) */
	readonly eventsPerFactor: number;
}

/**
 * How a rate of events depends on several circumstances at once, each adjusted for the others (log-linear rate,
 * maximum likelihood). What the data cannot tell apart is named instead of estimated.
 *
 * @param rows counts, exposures and the values of the factors, the same number in each row
 * @param confidence two-sided, 0 < confidence < 1
 * @param dispersion variance / mean of whole outings, 1 or more: it widens the limits
 * @returns ratios with limits; without events, or with none left to fit, no effect is a `fit`
 * @throws RangeError for broken counts, exposures, values, a dispersion of 0 or a confidence outside (0, 1)
 * @example poissonRegression(doctors, 0.95).effects[0] // smoking: 1.43 times (1.15 to 1.76), ages held
 * Source: McCullagh and Nelder 1989, Generalized Linear Models, 2nd ed., chapter 6; the doctors of Doll and Hill
 * 1966 in tests/published.
 */
export function poissonRegression(
	rows: readonly FactorRow[],
	confidence: number,
	dispersion = 1
): PoissonRegression {
	rows.forEach(checkRow);
	checkConfidence('confidence', confidence);
	checkPositive('dispersion', dispersion);
	const events = rows.reduce((sum, row) => sum + row.count, 0);
	const kept = keptFactors(rows);
	const fit = events > 0 ? logLinearSummit(rows, kept) : null;
	const z = normalQuantile(1 - (1 - confidence) / 2);
	const effects = kept.kinds.map((kind, factor): FactorEffect => {
		const place = kept.places.indexOf(factor);
		const error =
			fit && place >= 0 ? Math.sqrt(fit.inverse[place + 1][place + 1] * Math.max(1, dispersion)) : NaN;
		if (!fit || kind !== 'fit')
			return {
				kind: kind === 'fit' ? 'unbounded' : kind,
				ratio: NaN,
				lower: 0,
				upper: Infinity,
				pValue: NaN
			};
		const { spread } = kept.scales[place];
		const [step, reach] = [fit.coefficients[place + 1] / spread, (z * error) / spread];
		return {
			kind,
			ratio: Math.exp(step),
			lower: Math.exp(step - reach),
			upper: Math.exp(step + reach),
			pValue: 2 * normalAbove(Math.abs(step) / (error / spread))
		};
	});
	return {
		events,
		baseRate: fit ? Math.exp(atNought(fit.coefficients, kept)) : NaN,
		effects,
		eventsPerFactor: kept.places.length > 0 ? events / kept.places.length : Infinity
	};
}

function checkRow({ count, exposure, values }: FactorRow, _: number, rows: readonly FactorRow[]): void {
	checkCount('count', count);
	checkPositive('exposure', exposure);
	for (const value of values) checkFinite('value', value);
	if (values.length !== rows[0].values.length)
		throw new RangeError(`every row needs ${rows[0].values.length} values; one has ${values.length}`);
}

/** the log rate where every kept factor is 0, in the units of the caller */
function atNought(coefficients: readonly number[], { scales }: KeptFactors): number {
	return scales.reduce(
		(sum, { mean, spread }, i) => sum - (coefficients[i + 1] * mean) / spread,
		coefficients[0]
	);
}
