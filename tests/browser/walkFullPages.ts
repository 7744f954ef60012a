import { expect } from 'vitest';
import { walkByTab } from './walkByTab';
import type { Visit } from './workshop';

/** Walks by Tab through pages of the example that are full, a ride with an open event among them. */
export async function expectFullPagesByTab({ page }: Visit, ridePath: string, event: string): Promise<void> {
	const found: string[] = [];
	for (const path of [
		'/',
		`${ridePath}?event=${event}`,
		'/compare',
		'/builds/3/release',
		'/report?before=1&after=3',
		'/review',
		'/wheels/1',
		'/builds/3',
		'/builds/3/stack'
	]) {
		await page.goto(path, { waitUntil: 'networkidle' });
		const drawing = page.locator('[data-stage]');
		if ((await drawing.count()) > 0) await page.locator('[data-stage="shown"]').waitFor();
		// what is folded is walked through as well
		await page.evaluate(() =>
			document.querySelectorAll('main details').forEach((one) => ((one as HTMLDetailsElement).open = true))
		);
		for (const trouble of await walkByTab(page)) found.push(`${path}: ${trouble}`);
	}
	expect(found).toEqual([]);
}

/** Moves all strips of a ride by keys; what is read out at the place is spoken. */
export async function expectStripsByKeys(
	{ page }: Visit,
	shown: () => Promise<readonly number[]>
): Promise<void> {
	const slider = page.getByRole('slider');
	const spoken = () => slider.getAttribute('aria-valuetext');
	const whole = await shown();
	await slider.focus();
	await page.keyboard.press('+');
	// the window is told with the pictures that belong to it, some frames after the key
	const length = async () => {
		const [from, to] = await shown();
		return to - from;
	};
	await expect.poll(length).toBeLessThan(0.51 * (whole[1] - whole[0]));
	await page.keyboard.press('Home');
	await expect.poll(async () => (await shown())[0]).toBe(0);
	await expect.poll(spoken).toMatch(/^0:00; Distance 0\.00\skm; .*Speed/);
	await page.keyboard.press('ArrowRight');
	// once the traces are there, what they say is always said with the time
	expect(await spoken()).toMatch(/^\d+:\d\d; /);
	await expect.poll(spoken).not.toMatch(/^0:00; /);
	await page.keyboard.press('0');
	await expect.poll(shown).toEqual(whole);
	// the next event opens, is told, and the keys stay where they are
	await page.keyboard.press('Home');
	await page.keyboard.press('n');
	await page.getByRole('heading', { name: /^Event 1, / }).waitFor();
	await expect.poll(spoken).toMatch(/; event 1, Enter opens it$/);
	expect(await page.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('slider');
}
