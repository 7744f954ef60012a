/**
 * Words in lines of at most so many letters; a longer word stands alone.
 *
 * @example wrapped('one two three', 7) // ['one two', 'three']
 */
export function wrapped(text: string, letters: number): string[] {
	return text.split(' ').reduce<string[]>((lines, word) => {
		const last = lines.at(-1);
		if (last === undefined || last.length + 1 + word.length > letters) return [...lines, word];
		return [...lines.slice(0, -1), `${last} ${word}`];
	}, []);
}
