import { checkConfidence, checkPositive } from './checks';
import { chiSquareQuantile } from './chiSquareQuantile';
import { normalQuantile } from './normalQuantile';
import { checkHistories, watchedFromNew, type Ending } from './watchedHistory';

/** A rate of events that changes like a power of age: expected events up to age t are scale x t^shape. */
export interface PowerLawFit {
	readonly events: number;
	readonly end: number;
	/** of highest likelihood; below 1 the rate falls with age, above 1 it rises */
	readonly shape: number;
	/** freed of the bias of few events; 0 when so few say nothing (one event, or two when the last ends it) */
	readonly shapeUnbiased: number;
	/** exact limits of the shape */
	readonly shapeLower: number;
	readonly shapeUpper: number;
	/** expected events up to age 1, with the shape of highest likelihood */
	readonly scale: number;
	/** the same with the unbiased shape */
	readonly scaleUnbiased: number;
	/** events per unit of age at the end, of highest likelihood, with limits on the logarithm (approximate) */
	readonly rateAtEnd: number;
	readonly rateAtEndLower: number;
	readonly rateAtEndUpper: number;
	readonly logLikelihood: number;
}

/**
 * The power-law process of ONE system watched from age 0 without a gap, in closed form.
 *
 * @param events ages above 0; ties are separate events
 * @param end age at which watching ended; for `event` the last event's age is taken instead
 * @param ending whether the end was fixed apart from the events or is the last event
 * @param confidence two-sided, 0 < confidence < 1
 * @returns the fit; null without events, with one at age 0 (it has no logarithm), with all events at the end, or with the one that ended watching
 * @throws RangeError for ages outside 0 to end, an end that is not above 0, a confidence outside (0, 1)
 * @example powerLawProcess([5, 40, 43, 175, 389, 712, 747, 795, 1299, 1478], 1500, 'age', 0.8)
 *   // shape 0.537, unbiased 0.4835, limits 0.334 to 0.763
 * Source: Crow 1975, AMSAA Technical Report 138; IEC 61710; NIST/SEMATECH e-Handbook 8.4.5.2.
 */
export function powerLawProcess(
	events: readonly number[],
	end: number,
	ending: Ending,
	confidence: number
): PowerLawFit | null {
	checkConfidence('confidence', confidence);
	const last = ending === 'event' ? Math.max(...events, 0) : end;
	if (events.length === 0 || events.includes(0)) return null;
	checkPositive('end', last);
	checkHistories([watchedFromNew(events, last)]);
	const n = events.length;
	const sum = events.reduce((total, age) => total + Math.log(last / age), 0);
	if (!(sum > 0)) return null;
	// an event that fixed the end says nothing about the shape any more
	const free = ending === 'event' ? n - 1 : n;
	const shape = n / sum;
	const shapeUnbiased = (free - 1) / sum;
	const tail = (1 - confidence) / 2;
	const rateAtEnd = (n * shape) / last;
	const reach = normalQuantile(1 - tail) * Math.sqrt(2 / n);
	const scale = n / last ** shape;
	return {
		events: n,
		end: last,
		shape,
		shapeUnbiased,
		shapeLower: chiSquareQuantile(tail, 2 * free) / (2 * sum),
		shapeUpper: chiSquareQuantile(1 - tail, 2 * free) / (2 * sum),
		scale,
		scaleUnbiased: n / last ** shapeUnbiased,
		rateAtEnd,
		rateAtEndLower: rateAtEnd * Math.exp(-reach),
		rateAtEndUpper: rateAtEnd * Math.exp(reach),
		logLikelihood:
			n * Math.log(scale * shape) + (shape - 1) * events.reduce((total, age) => total + Math.log(age), 0) - n
	};
}
