import { WORDS } from './wordList';
import { WORD_NAMES, type WordId } from './wordNames';

/** Where an explanation goes on. */
export interface WordLink {
	readonly href: string;
	readonly name: string;
}

/** What a word of the trade or a figure of the pages means, in sentences that a mechanic understands. */
export interface WordText {
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

/** A word with its anchor, its name and its meaning. */
export interface Word extends WordText {
	readonly id: WordId;
	readonly word: string;
}

export function wordOf(id: WordId): Word {
	return { id, word: WORD_NAMES[id], ...WORDS[id] };
}

/** The words of one group, in their order. */
export function wordsOf(group: WordGroup): Word[] {
	return (Object.keys(WORDS) as WordId[]).map(wordOf).filter((word) => word.group === group);
}
