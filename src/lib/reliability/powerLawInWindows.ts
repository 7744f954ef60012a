import { checkConfidence, checkPositive } from './checks';
import { chiSquareQuantile } from './chiSquareQuantile';
import { normalAbove } from './normalAbove';
import { powersOfWindows } from './powersOfWindows';
import { rootBetween } from './rootBetween';
import { checkHistories, type WatchedHistory } from './watchedHistory';

/** shapes outside 0.02 to 50 are no longer told apart from 0 and infinity */
const LOG_SHAPE_EDGE = Math.log(50);

export interface WindowedPowerLaw {
	readonly events: number;
	/** below 1 the rate falls with age, above 1 it rises; 0.02 stands for "0.02 or less" */
	readonly shape: number;
	/** limits of the shape by the likelihood; 0 and Infinity where the likelihood does not fall off */
	readonly shapeLower: number;
	readonly shapeUpper: number;
	/** expected events of one system up to age 1 */
	readonly scale: number;
	readonly logLikelihood: number;
	/** two-sided p-value of "the rate is constant" by the likelihood ratio */
	readonly pConstant: number;
}

/**
 * The power-law process that several systems have in common, fitted to what was watched only: late entry and
 * gaps are allowed, a system without events counts as watched in vain. Without gaps and with one end for all it
 * gives the closed form of `powerLawProcess`.
 *
 * @param histories one a system
 * @param confidence two-sided, 0 < confidence < 1
 * @param dispersion variance / mean of whole outings where events come in bursts (`clusteredCount`): limits and
 *   p-value then allow for it; below 1 counts as 1
 * @returns the fit; null without events, with one at age 0 (it has no logarithm), or when the likelihood has no
 *   summit (all events at the edge)
 * @throws RangeError for windows that overlap, events outside them, a confidence outside (0, 1)
 * @example powerLawInWindows([watchedFromNew([0.5, 1, 1.5, 2, 3], 4), watchedFromNew([50], 100)], 0.9)
 *   // shape 0.3444, scale 0.9237
 * Source: likelihood of a Poisson process with intensity scale x shape x t^(shape - 1) over the windows, Rigdon
 * and Basu 2000, Statistical Methods for the Reliability of Repairable Systems (from memory); limits by the
 * likelihood ratio, divided by the dispersion (McCullagh and Nelder 1989, section 9.2) where there are bursts.
 */
export function powerLawInWindows(
	histories: readonly WatchedHistory[],
	confidence: number,
	dispersion = 1
): WindowedPowerLaw | null {
	checkHistories(histories);
	checkConfidence('confidence', confidence);
	checkPositive('dispersion', dispersion);
	const events = histories.flatMap((history) => [...history.events]);
	if (events.length === 0 || events.some((age) => age === 0)) return null;
	const windows = histories.flatMap((history) => [...history.windows]);
	// ages are divided by the largest, so that powers neither overflow nor vanish
	const unit = windows.reduce((largest, { to }) => Math.max(largest, to), 0);
	const n = events.length;
	const logSum = events.reduce((sum, age) => sum + Math.log(age / unit), 0);
	const powers = powersOfWindows(windows, unit);
	const height = (logShape: number) =>
		n * (logShape - Math.log(powers(Math.exp(logShape)).grown)) + Math.exp(logShape) * logSum;
	const slope = (logShape: number) => {
		const shape = Math.exp(logShape);
		const { grown, moved } = powers(shape);
		return n / shape + logSum - (n * moved) / grown;
	};
	// entered late, early events can ask for a shape of nought and less: the least that is told stands for it
	const summit =
		slope(-LOG_SHAPE_EDGE) < 0 ? -LOG_SHAPE_EDGE : rootBetween(slope, -LOG_SHAPE_EDGE, LOG_SHAPE_EDGE);
	if (Number.isNaN(summit)) return null;
	const scatter = Math.max(1, dispersion);
	const drop = (scatter * chiSquareQuantile(confidence, 1)) / 2;
	const top = height(summit);
	const below = (logShape: number) => height(logShape) - top + drop;
	const lower = rootBetween(below, -LOG_SHAPE_EDGE, summit);
	const upper = rootBetween(below, summit, LOG_SHAPE_EDGE);
	const shape = Math.exp(summit);
	return {
		events: n,
		shape,
		shapeLower: Number.isNaN(lower) ? 0 : Math.exp(lower),
		shapeUpper: Number.isNaN(upper) ? Infinity : Math.exp(upper),
		scale: n / powers(shape).grown / unit ** shape,
		// the height without what does not depend on the shape: n log n - n, and the unit of age
		logLikelihood: top + n * Math.log(n) - n - logSum - n * Math.log(unit),
		pConstant: 2 * normalAbove(Math.sqrt(Math.max(0, (2 * (top - height(0))) / scatter)))
	};
}
