import { expect } from 'vitest';
import type { Visit } from './workshop';

/** Decides events by keys alone; nothing on the page tells whose they are before the answer. */
export async function expectReviewByKeys({ page, complaints, accessibility }: Visit): Promise<void> {
	await page.goto('/review');
	const token = () => page.locator('input[name="token"]').first().inputValue();
	const main = page.locator('main');
	const left = async () => Number(/([\d,]+) (?:are|is) left/.exec(await main.innerText())![1]);
	const first = await left();
	for (const secret of [
		'Wheel 1',
		'Wheel 2',
		'Wheel 3',
		'Original',
		'Prototype',
		'Retrofit',
		'.fit',
		'R1',
		'2026'
	])
		expect(await main.innerHTML()).not.toContain(secret);
	expect(await accessibility()).toEqual([]);

	const times: number[] = [];
	let events = 0;
	for (const key of ['y', '1', 'y', '3', 'y', '5', 'y', '1', 'y', 'y']) {
		const before = await token();
		const from = Date.now();
		await page.keyboard.press(key);
		await page.waitForFunction(
			(last) => document.querySelector<HTMLInputElement>('input[name="token"]')?.value !== last,
			before
		);
		times.push(Date.now() - from);
		const told = await page.getByRole('status').innerText();
		if (!told.includes('had put in')) events++;
		expect(told).toMatch(/ridden|into riding of/);
	}
	const median = times.toSorted((a, b) => a - b)[times.length >> 1];
	console.log(`review: from the key to the next event ${median} ms (median of ${times.length})`);
	expect(await left()).toBe(first - events);

	const open = await token();
	await page.keyboard.press('u');
	await page.waitForFunction(
		(last) => document.querySelector<HTMLInputElement>('input[name="token"]')?.value !== last,
		open
	);
	// a key pressed in the note is a letter, not an answer
	await page.getByLabel('Note').fill('');
	const held = await token();
	await page.getByLabel('Note').press('y');
	expect(await token()).toBe(held);
	expect(await page.getByRole('heading', { name: 'How far the review can be trusted' }).count()).toBe(1);
	expect(complaints).toEqual([]);
}
