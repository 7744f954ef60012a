/**
 * Keeps a list the same object while it holds the same things in the same order: what hangs on it stays as it is while
 * the window moves.
 *
 * @returns hand it each list; it answers with that of before where nothing has changed
 */
export function steadyItems<Item>(): (asked: readonly Item[]) => readonly Item[] {
	let kept: readonly Item[] = [];
	return (asked) => {
		if (asked.length !== kept.length || asked.some((item, place) => item !== kept[place])) kept = asked;
		return kept;
	};
}
