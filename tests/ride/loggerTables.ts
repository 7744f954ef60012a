import type { ColumnMapping } from '$lib/ride/columnMapping';
import { decodeRide } from '$lib/ride/decodeRide';
import { READ_LIMITS } from '$lib/ride/limits';

export const bytesOf = (text: string) => new TextEncoder().encode(text);
export const read = (text: string, mapping: ColumnMapping | null) =>
	decodeRide(bytesOf(text), 'logger.csv', READ_LIMITS, mapping);

export const RPM: ColumnMapping = {
	time: { column: 0, unit: 's' },
	crank: { column: 1, as: 'rpm' },
	wheel: { column: 2, as: 'rpm' },
	load: { column: 3, as: 'Nm' }
};

/** a table of so many rows at a rate, from what a row holds */
export function table(
	names: string,
	count: number,
	hz: number,
	row: (timeS: number, i: number) => (number | string)[]
): string {
	const rows = Array.from({ length: count }, (_, i) => row(i / hz, i).join(','));
	return `${names}\n${rows.join('\n')}\n`;
}

/** of the rows in the middle: the ends of a table have half a window */
export const middle = (all: readonly number[]) =>
	all.slice(Math.floor(all.length / 4), Math.ceil((all.length * 3) / 4));
