import type { NumberWords } from './criteria';

/** "1 wheel", "3 wheels". */
export function counted(count: number, one: string, several: string, words: NumberWords): string {
	return `${words.number(count)} ${count === 1 ? one : several}`;
}

/**
 * "no slip counts"; "3 slips count"; "3 events count, 2 of them not reviewed"; "4 events count, none of them reviewed".
 * Only what was confirmed is called a slip.
 */
export function countedSlips(slips: number, confirmed: number, words: NumberWords): string {
	if (slips === 0) return 'no slip counts';
	const open = slips - confirmed;
	if (open <= 0) return counted(slips, 'slip counts', 'slips count', words);
	const events = counted(slips, 'event counts', 'events count', words);
	if (open < slips) return `${events}, ${words.number(open)} of them not reviewed`;
	return slips === 1 ? `${events}, not reviewed` : `${events}, none of them reviewed`;
}
