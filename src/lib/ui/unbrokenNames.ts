/** A piece of a sentence; a name is kept on one line. */
export interface SentencePiece {
	readonly text: string;
	readonly name: boolean;
}

/** Longer ones must break, or they would push a phone's page over its edge. */
const LONGEST = 24;

/**
 * Parts a sentence so that part numbers and numbered things stay whole: a browser breaks a line after any hyphen, and
 * half of a number is another number. What is taken for a name: letters and figures joined by hyphens, at least one of
 * them a figure or a capital; or a word with a capital and the figures after it.
 *
 * @example unbrokenNames('Record the batch of EX-BR-15.') // ["Record the batch of ", "EX-BR-15", "."]
 * @example unbrokenNames('139 km on Wheel 3.') // ["139 km on ", "Wheel 3", "."]
 */
export function unbrokenNames(sentence: string): SentencePiece[] {
	return sentence
		.split(/([\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)+|(?<![\p{L}\p{N}])\p{Lu}\p{L}* \p{N}+(?![\p{L}\p{N}]))/u)
		.map((text, i) => ({ text, name: i % 2 === 1 && text.length <= LONGEST && /[\p{Lu}\p{N}]/u.test(text) }))
		.filter(({ text }) => text !== '');
}
