import type { NumberWords } from './criteria';

/** "1 wheel", "3 wheels". */
export function counted(count: number, one: string, several: string, words: NumberWords): string {
	return `${words.number(count)} ${count === 1 ? one : several}`;
}

/** "no slip counts"; "3 slips count, 2 of them not reviewed": what nobody has confirmed is said wherever it counts. */
export function countedSlips(slips: number, confirmed: number, words: NumberWords): string {
	if (slips === 0) return 'no slip counts';
	const open = slips - confirmed;
	return `${counted(slips, 'slip counts', 'slips count', words)}${open > 0 ? `, ${words.number(open)} of them not reviewed` : ''}`;
}
