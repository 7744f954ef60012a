/**
 * What counted things are called: slips once all that counts is confirmed, events while any of it waits for a review.
 *
 * @param count how many, 0 or more
 * @param unreviewed how many of all that counts nobody has reviewed, 0 or more
 * @example countedNoun(1, 0) // "slip"
 * @example countedNoun(4, 2) // "events"
 */
export function countedNoun(count: number, unreviewed: number): string {
	const noun = unreviewed > 0 ? 'event' : 'slip';
	return count === 1 ? noun : `${noun}s`;
}
