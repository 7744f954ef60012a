import type { FoundShare, InsertionView } from '$lib/server';
import type { Formats } from '$lib/ui/formats';

/** the reference slip, crank degrees */
const REFERENCE_DEG = 90;
/** share of reference slips that an observed stretch promises to show */
const PROMISED = 0.9;

/**
 * The one line about slips put into a ride.
 *
 * @example "Of slips of 90 crank degrees put into this ride, these were found: 27 of 30 (73 % to 98 %) on its
 * observed stretches, 3 of 12 (5 % to 57 %) elsewhere."
 */
export function insertionSentence({ sizes, halfFound }: InsertionView, formats: Formats): string {
	const reference = sizes.find(({ crankDeg }) => crankDeg === REFERENCE_DEG);
	const parts = [
		...(reference && reference.observed.put > 0
			? [`${shareWords(reference.observed, formats)} on its observed stretches`]
			: []),
		...(reference && reference.elsewhere.put > 0
			? [`${shareWords(reference.elsewhere, formats)} elsewhere`]
			: [])
	];
	if (parts.length === 0) return 'No slip of the reference size could be put into this ride.';
	const half = halfFound
		? ` On observed stretches half of them are found from about ${formats.number(halfFound.crankDeg)} crank degrees on (${formats.number(halfFound.lower)} to ${formats.number(halfFound.upper)}).`
		: '';
	return `Of slips of ${formats.number(REFERENCE_DEG)} crank degrees put into this ride, these were found: ${parts.join(', ')}.${half}${shortfall(reference?.observed)}`;
}

/** Said where even the upper limit lies below what "observed" promises. */
function shortfall(observed: FoundShare | undefined): string {
	if (!observed || observed.put === 0 || observed.upper >= PROMISED) return '';
	return ' That is fewer than the nine in ten that an observed stretch promises: the observed distance of this ride says too much.';
}

/** "27 of 30 (73 % to 98 %)"; "none put in" where there was none */
export function shareWords({ put, found, lower, upper }: FoundShare, formats: Formats): string {
	if (put === 0) return 'none put in';
	return `${formats.number(found)} of ${formats.number(put)} (${formats.share(lower)} to ${formats.share(upper)})`;
}
