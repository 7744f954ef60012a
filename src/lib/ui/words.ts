import { WORDS } from './wordList';

/** Where an explanation goes on. */
export interface WordLink {
	readonly href: string;
	readonly name: string;
}

/** One word of the trade, or one figure of the pages, in sentences that a mechanic understands. */
export interface Word {
	readonly word: string;
	readonly group: WordGroup;
	/** what it is */
	readonly says: string;
	/** what the figure is made of, or how to read it */
	readonly madeOf?: string;
	/** published source, or that there is none */
	readonly source?: string;
	readonly more?: WordLink;
}

export const WORD_GROUPS = [
	'The hub',
	'On the road',
	'What the tool finds',
	'Kilometres',
	'How often, and how sure',
	'The way to a decision'
] as const;
export type WordGroup = (typeof WORD_GROUPS)[number];

export type WordId = keyof typeof WORDS;

/** The words of one group, in their order, each with its anchor. */
export function wordsOf(group: WordGroup): (Word & { id: WordId })[] {
	return (Object.keys(WORDS) as WordId[])
		.map((id) => ({ id, ...(WORDS[id] as Word) }))
		.filter((word) => word.group === group);
}
