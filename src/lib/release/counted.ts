import type { NumberWords } from './criteria';

/** "1 wheel", "3 wheels". */
export function counted(count: number, one: string, several: string, words: NumberWords): string {
	return `${words.number(count)} ${count === 1 ? one : several}`;
}
