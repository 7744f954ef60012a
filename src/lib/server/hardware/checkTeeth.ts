import { LedgerRefusal } from '../refusal';

const LIMITS = {
	chainrings: { what: 'chainrings', most: 4, min: 16, max: 80 },
	cassette: { what: 'sprockets', most: 16, min: 8, max: 60 }
} as const;

/**
 * Tooth counts as a person states them, smallest first, each once.
 *
 * @param teeth null, undefined or empty = not stated
 * @throws LedgerRefusal wrong-value for what no bicycle has
 */
export function checkTeeth(
	of: keyof typeof LIMITS,
	teeth: readonly number[] | null | undefined
): number[] | null {
	if (!teeth || teeth.length === 0) return null;
	const { what, most, min, max } = LIMITS[of];
	const inOrder = [...new Set(teeth)].sort((a, b) => a - b);
	if (inOrder.length > most || !inOrder.every((one) => Number.isInteger(one) && one >= min && one <= max))
		throw new LedgerRefusal(
			'wrong-value',
			`The teeth of the ${what} are 1 to ${most} whole numbers from ${min} to ${max}, as in "${of === 'cassette' ? '11, 13, 15, 18' : '46, 30'}".`
		);
	return inOrder;
}
