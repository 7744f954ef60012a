import type { Formats } from './formats';

/** The part of a rate that its words need; the server's RateView fits. */
export interface RateFigures {
	readonly count: number;
	readonly observedM: number;
	readonly ratePerHundredKm: number | null;
	readonly lowerPerHundredKm: number;
	readonly upperPerHundredKm: number | null;
	readonly confidence: number;
}

export interface RateWords {
	/** short, for the large figure */
	readonly value: string;
	/** limits, confidence, exposure */
	readonly sentence: string;
	/** the same to follow a colon */
	readonly clause: string;
}

/**
 * A rate in words. "0" is never written: no event found bounds the rate and does not make it nothing. What nobody has
 * reviewed is an event that is counted, not yet a slip.
 *
 * @param unreviewed how many of the counted nobody has reviewed, 0 or more
 * @example rateWords({ count: 0, observedM: 98000, ... upperPerHundredKm: 3.76 }, formats).value
 * // "none found; at most 3.8 per 100 observed km"
 */
export function rateWords(rate: RateFigures, formats: Formats, unreviewed = 0): RateWords {
	const { value, sentence } = wordsOf(rate, formats, unreviewed);
	return { value, sentence, clause: sentence.charAt(0).toLowerCase() + sentence.slice(1) };
}

function wordsOf(
	rate: RateFigures,
	formats: Formats,
	unreviewed: number
): { value: string; sentence: string } {
	const exposure = formats.km(rate.observedM).replace('\u00a0km', '\u00a0observed\u00a0km');
	const confidence = formats.share(rate.confidence);
	if (rate.upperPerHundredKm === null || rate.ratePerHundredKm === null) {
		return {
			value: 'nothing observed yet',
			sentence: 'No ride has yet observed any distance of this build, so no rate can be given.'
		};
	}
	const upper = formats.figure(rate.upperPerHundredKm);
	if (rate.count === 0) {
		return {
			value: `none found; at most ${upper} per 100 observed km`,
			sentence: `No slip of the reference size counts on ${exposure}: the rate may still be up to ${upper} per 100 observed km (upper end of its ${confidence} limits).`
		};
	}
	const value = formats.figure(rate.ratePerHundredKm);
	const lower = formats.figure(rate.lowerPerHundredKm);
	const several = rate.count !== 1;
	const slips =
		unreviewed > 0
			? `${formats.number(rate.count)} ${several ? 'events counted as slips' : 'event counted as a slip'}`
			: `${formats.number(rate.count)} ${several ? 'slips' : 'slip'}`;
	return {
		value: `${value} per 100 observed km`,
		sentence: `${slips} on ${exposure}: ${value} per 100 observed km, ${confidence} limits ${lower} to ${upper}.`
	};
}
