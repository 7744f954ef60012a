import type { Page } from 'playwright-core';
import type { Visit } from './workshop';

/** A first visit gives a name; the page that follows offers the example or an empty ledger. */
export async function giveName({ page }: Pick<Visit, 'page'>, name: string): Promise<void> {
	await page.goto('/welcome');
	await page.getByLabel('Your name').fill(name);
	await page.getByRole('button', { name: 'Go on' }).click();
	await page.waitForLoadState('networkidle');
}

/** A first visit: a name is given and an empty ledger chosen; the page that follows asks for a wheel. */
export async function startEmpty(visit: Pick<Visit, 'page'>, name: string): Promise<void> {
	await giveName(visit, name);
	await visit.page.getByRole('button', { name: 'Start empty' }).click();
	await visit.page.getByText('No wheel yet').waitFor();
}

/**
 * Somebody comes in by password to a server that asks for one.
 *
 * @param to a page that leads to the sign-in first, and is shown after it
 */
export async function comeIn(
	page: Page,
	who: { readonly name: string; readonly password: string },
	to: string
): Promise<void> {
	await page.goto(to);
	await page.getByLabel('Name or code').fill(who.name);
	await page.getByLabel('Password').fill(who.password);
	await page.getByRole('button', { name: 'Come in' }).click();
	await page.waitForURL((url) => !url.pathname.endsWith('/sign-in'));
}

/** What a visit complains of, without the failed request that a browser reports for a refused form. */
export function unexpectedOn({ complaints }: Visit): string[] {
	return complaints.filter((complaint) => !complaint.includes('status of 400'));
}
