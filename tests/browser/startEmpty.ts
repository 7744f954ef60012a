import type { Visit } from './workshop';

/** A first visit: a name is given and an empty ledger chosen; the page that follows asks for a wheel. */
export async function startEmpty({ page }: Visit, name: string): Promise<void> {
	await page.goto('/');
	await page.getByLabel('Your name').fill(name);
	await page.getByRole('button', { name: 'Go on' }).click();
	await page.getByRole('button', { name: 'Start empty' }).click();
	await page.getByText('No wheel yet').waitFor();
}

/** What a visit complains of, without the failed request that a browser reports for a refused form. */
export function unexpectedOn({ complaints }: Visit): string[] {
	return complaints.filter((complaint) => !complaint.includes('status of 400'));
}
