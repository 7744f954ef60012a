/** Rows of one shape, column by column: each name is written once, and numbers stand in one text. */
export interface RowColumns {
	readonly rows: number;
	/** numbers of a column as one text (`numbersText`); anything else one by one */
	readonly columns: Readonly<Record<string, string | readonly unknown[]>>;
}

/** fewer rows than this gain nothing */
const FEWEST_ROWS = 4;

/**
 * Rows as columns, to the last bit: some thousand rows take a third of the room and of the time.
 *
 * @returns null for what is no list of at least four plain objects with the same names
 * @example toColumns([{ a: 1, b: 'x' }, ...]) // { rows: 4, columns: { a: '+1 ...', b: ['x', ...] } }
 */
export function toColumns(value: unknown): RowColumns | null {
	if (!Array.isArray(value) || value.length < FEWEST_ROWS || !isPlain(value[0])) return null;
	const names = Object.keys(value[0]);
	if (names.length === 0) return null;
	const alike = (row: unknown) =>
		isPlain(row) &&
		Object.keys(row).length === names.length &&
		names.every((name) => Object.hasOwn(row, name));
	// a hole is no row
	for (let place = 0; place < value.length; place++) if (!alike(value[place])) return null;
	return {
		rows: value.length,
		columns: Object.fromEntries(
			names.map((name) => {
				const column = value.map((row) => row[name] as unknown);
				return [name, column.every((one) => typeof one === 'number') ? numbersText(column) : column];
			})
		)
	};
}

/** The rows again, each an object of its own. */
export function toRows({ rows, columns }: RowColumns): Record<string, unknown>[] {
	const read = Object.entries(columns).map(
		([name, column]) => [name, typeof column === 'string' ? textNumbers(column) : column] as const
	);
	return Array.from({ length: rows }, (_, place) =>
		Object.fromEntries(read.map(([name, column]) => [name, column[place]]))
	);
}

/**
 * Numbers as one text, to the last bit. The first sign says how: "=" as they are, "+" whole numbers of which each
 * after the first is written as what it is more than the one before (distances that rise are then half as long).
 *
 * @example numbersText([1000, 1010, 1030]) // '+1000 10 20'
 * @example numbersText([0.5, NaN]) // '=0.5 NaN'
 */
export function numbersText(numbers: readonly number[]): string {
	const whole = numbers.every(
		(one) => Number.isSafeInteger(2 * one) && Number.isInteger(one) && !Object.is(one, -0)
	);
	if (whole)
		return `+${numbers.map((one, place) => (place === 0 ? one : one - numbers[place - 1])).join(' ')}`;
	return `=${numbers.map((one) => (Object.is(one, -0) ? '-0' : one)).join(' ')}`;
}

/** The numbers of such a text. */
export function textNumbers(text: string): number[] {
	if (text.length < 2) return [];
	const numbers = text.slice(1).split(' ').map(Number);
	if (text[0] === '+')
		for (let place = 1; place < numbers.length; place++) numbers[place] += numbers[place - 1];
	return numbers;
}

function isPlain(value: unknown): value is Record<string, unknown> {
	return typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;
}
