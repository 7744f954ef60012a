/**
 * The seconds that the strips show: seven before the onset and fifteen in all, more when the event lasts longer, or
 * everything that there is.
 *
 * @param onsetS second of the onset in the traces
 * @param lastsS seconds from onset to end
 * @param length seconds in the traces
 * @example shownSpan(12, 1, 30, false) // [5, 20]
 */
export function shownSpan(onsetS: number, lastsS: number, length: number, wide: boolean): [number, number] {
	if (wide) return [0, Math.max(1, length - 1)];
	const from = Math.max(0, onsetS - 7);
	return [from, Math.min(Math.max(1, length - 1), Math.max(from + 15, onsetS + lastsS + 5))];
}
