/** a page asks the same again and again; more different questions than this and all is forgotten */
const MOST_KEPT = 2000;

/**
 * A function of a number that remembers what it answered: writing a number or an instant in some language takes ten
 * times as long as finding it written.
 *
 * @param compute always answers the same to the same; -0 and 0 are one
 */
export function keepAnswers<Answer>(
	compute: (asked: number) => Answer,
	most = MOST_KEPT
): (asked: number) => Answer {
	const answers = new Map<number, Answer>();
	return (asked) => {
		const known = answers.get(asked);
		if (known !== undefined) return known;
		const answer = compute(asked);
		if (answers.size >= most) answers.clear();
		answers.set(asked, answer);
		return answer;
	};
}
