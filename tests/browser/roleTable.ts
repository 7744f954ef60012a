import type { Role } from '$lib/server';

export type Who = 'nobody' | Role;
export const EVERYBODY: readonly Who[] = ['nobody', 'rider', 'engineer', 'owner'];

/** Routes by who may do what there, to be read in the output of the test. */
export function asTable(table: Record<string, Record<Who, string>>): string {
	const width = Math.max(...Object.keys(table).map(({ length }) => length));
	const line = (first: string, cells: readonly string[]) =>
		[first.padEnd(width), ...cells.map((cell) => cell.padEnd(13))].join('  ').trimEnd();
	return [
		line('route', EVERYBODY),
		...Object.entries(table).map(([route, row]) =>
			line(
				route,
				EVERYBODY.map((who) => row[who])
			)
		)
	].join('\n');
}
