import type { Visit } from './workshop';

/** "1:02:05" or "2:05" as seconds. */
export function seconds(clock: string): number {
	return clock
		.trim()
		.split(/\s/)[0]
		.split(':')
		.reduce((sum, part) => sum * 60 + Number(part), 0);
}

/** What the programme says of the first build. */
export async function originalCounts(visit: Visit): Promise<string> {
	await visit.page.goto('/');
	return visit.page.getByRole('article').first().locator('dl').innerText();
}

/** Number of the first event that the page of a ride opens. */
export async function firstEvent(visit: Visit, ridePath: string): Promise<string> {
	await visit.page.goto(ridePath);
	const href = await visit.page
		.getByRole('link', { name: /^Open event/ })
		.first()
		.getAttribute('href');
	return /event=(\d+)/.exec(href ?? '')?.[1] ?? '';
}

/** Every page of the example, each in at least one of its states; a new page gets a line. */
export function everyPath(ridePath: string, event: string): string[] {
	return [
		'/',
		'/rides',
		'/rides/files',
		'/rides/files?all=1',
		ridePath,
		`${ridePath}?event=${event}`,
		'/wheels',
		'/wheels/1',
		'/wheels/1?km=100',
		'/bikes',
		'/bikes/2',
		'/people',
		'/people/1/erasure',
		'/builds',
		'/builds/1',
		'/builds/3/sheet',
		'/parts',
		'/parts/1',
		'/compare',
		'/report',
		'/report?before=1&after=3',
		'/review',
		'/method',
		'/help',
		'/words#observed-distance',
		'/recording',
		'/first-look',
		'/compare?look=5',
		'/versions',
		'/ledger',
		'/settings',
		'/access',
		'/own',
		'/come',
		'/set-password'
	];
}
