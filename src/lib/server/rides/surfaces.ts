/** What a ride was mostly ridden on, in the trade's words; the table's CHECK holds the same list. */
export const SURFACES = [
	'tarmac',
	'cobbles',
	'gravel road',
	'forest track',
	'narrow trail',
	'mixed'
] as const;
export type Surface = (typeof SURFACES)[number];
