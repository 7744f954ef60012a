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

/** Pages that stand in no list of the example, and where they are looked at instead. */
export const LOOKED_AT_ELSEWHERE: Readonly<Record<string, string>> = {
	'/design': 'tests/browser/designShots.ts: the built server answers 404',
	'/own/[id]': 'tests/browser/riderPhone.test.ts: it needs a rider of its own',
	'/password': 'tests/browser/riderPhone.test.ts: there only where people sign in',
	'/rides/[id]/columns': 'tests/browser/columns.test.ts: it needs a ride that was read from such a table',
	'/rides/columns/[id]': 'tests/browser/columns.test.ts: it needs a table whose columns are not known'
};

/** Every page of the example, each in at least one of its states; a new page gets a line (a test holds it). */
export function everyPath(ridePath: string, event: string): string[] {
	return [
		'/',
		'/rides',
		'/rides/files',
		'/rides/files?all=1',
		'/rides?needs=1',
		'/answers',
		ridePath,
		`${ridePath}?event=${event}`,
		'/wheels',
		'/wheels/1',
		'/wheels/1?km=100',
		'/wheels/1/inspections',
		'/wheels/1/inspections/1',
		'/wheels/1/inspections/write',
		'/wheels/2/incidents',
		'/wheels/2/incidents/1',
		'/bikes',
		'/bikes/2',
		'/people',
		'/people/1/erasure',
		'/builds',
		'/builds/1',
		'/builds/1/edit',
		'/builds/3/sheet',
		'/builds/3/stack',
		'/builds/3/stack/edit',
		'/builds/3/release',
		'/parts',
		'/parts/1',
		'/parts/1/edit',
		'/parts/new',
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
		'/ledger/trail',
		'/settings',
		'/access',
		'/own',
		'/come',
		'/set-password',
		'/welcome?other=1',
		'/sign-in'
	];
}
