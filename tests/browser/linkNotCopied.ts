import { expect } from 'vitest';
import type { Visit } from './workshop';

/**
 * In plain http, which a workshop's own network is, a browser gives no page the clipboard: the page must not say that
 * it copied the link, and marks it to be copied by hand.
 */
export async function expectNotCopied({ page }: Visit, link: string): Promise<void> {
	await page.getByRole('button', { name: 'Copy the link' }).click();
	await page.getByText('The link is marked: copy it by the keyboard').waitFor();
	expect(await page.getByText('Copied.').count()).toBe(0);
	expect(await page.evaluate(() => String(getSelection()))).toBe(link);
}
