import { describe, expect, it } from 'vitest';
import { numbersText, textNumbers, toColumns, toRows } from '$lib/tables/rowColumns';
import { randomNumbers } from '$lib/reliability/randomNumbers';

const there = (value: unknown) => toRows(toColumns(value)!);

describe('numbersText', () => {
	it('writes whole numbers as what each is more than the one before', () => {
		expect(numbersText([1000, 1010, 1030, 900])).toBe('+1000 10 20 -130');
		expect(numbersText([0.5, 7])).toBe('=0.5 7');
	});

	it('gives every number back to the last bit, also those that are no figures', () => {
		const draw = randomNumbers(3);
		const lists = [
			[],
			[0],
			[-0],
			[NaN, Infinity, -Infinity, -0, 5e-324, 1.7976931348623157e308],
			[2 ** 52, -(2 ** 52), 0, 2 ** 53 - 1, -(2 ** 53) + 1],
			Array.from({ length: 500 }, () => draw.next() * 10 ** (draw.below(40) - 20)),
			Array.from({ length: 500 }, () => draw.below(2 ** 31) - 2 ** 30)
		];
		for (const numbers of lists) {
			const back = textNumbers(numbersText(numbers));
			expect(back).toHaveLength(numbers.length);
			expect(back.every((one, place) => Object.is(one, numbers[place]))).toBe(true);
		}
	});
});

describe('toColumns', () => {
	const row = (fromM: number) => ({ fromM, toM: fromM + 0.5, wheel: `W${fromM}`, rate: null, at: { s: 1 } });
	const rows = [row(0), row(7), row(8), row(20)];

	it('writes each name once and numbers as one text', () => {
		const { columns } = toColumns(rows)!;
		expect(columns).toMatchObject({
			fromM: '+0 7 1 12',
			toM: '=0.5 7.5 8.5 20.5',
			rate: [null, null, null, null]
		});
	});

	it('gives the rows back, with their names in order', () => {
		expect(there(rows)).toStrictEqual(rows);
		expect(Object.keys(there(rows)[0])).toEqual(Object.keys(rows[0]));
		const some = [{ a: 1 }, { a: null }, { a: undefined }, { a: 'x' }];
		expect(there(some)).toStrictEqual(some);
	});

	it('leaves alone what is no list of rows of one shape', () => {
		const rest = [{ a: 1 }, { a: 2 }, { a: 3 }];
		for (const other of [
			rest,
			[...rest, { b: 4 }],
			[...rest, { a: 4, b: 5 }],
			[...rest, null],
			[...rest, new Date(0)],
			Object.assign([...rest, { a: 4 }], { length: 6 }),
			[{}, {}, {}, {}],
			[1, 2, 3, 4],
			{ length: 4 },
			'text'
		])
			expect(toColumns(other)).toBeNull();
	});
});
