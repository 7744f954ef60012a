import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { pinch } from './pinch';
import { seconds } from './exampleWords';
import type { Visit } from './workshop';

/** What the strips show, seconds (or kilometres on the axis of distance). */
async function shown({ page }: Visit): Promise<[number, number]> {
	const [from, to] = (await page.locator('#strips-heading').innerText()).split(' to ');
	const place = (words: string) => (words.includes('km') ? parseFloat(words) : seconds(words));
	return [place(from), place(to)];
}

const length = ([from, to]: [number, number]) => to - from;

async function readOut({ page }: Visit, name: string): Promise<string> {
	const item = page.getByLabel('Read-out').locator('div', { has: page.locator(`dt:text-is("${name}")`) });
	return item.locator('dd').innerText();
}

/**
 * One read-out, one window and one open event for all views of a ride that has at least two events: wheel, drag,
 * keys, axis, and a pick in each of strips, band, fan, track and table; then its charts as files.
 */
export async function expectRideViewsAgree(visit: Visit, ridePath: string): Promise<void> {
	const { page } = visit;
	await page.goto(ridePath);
	await page.locator('[data-stage="shown"]').waitFor();
	const strips = page.getByRole('slider');
	const box = (await strips.boundingBox())!;
	const middle = { x: box.x + box.width / 2, y: box.y + 120 };
	const whole = await shown(visit);

	// the wheel scrolls the page until the strips have been chosen
	await strips.focus();
	await page.mouse.move(middle.x, middle.y);
	await page.mouse.wheel(0, -400);
	await expect.poll(async () => length(await shown(visit))).toBeLessThan(0.5 * length(whole));
	const zoomed = await shown(visit);

	// a drag to the left moves the window on; with Shift it chooses a stretch
	await page.mouse.down();
	await page.mouse.move(middle.x - 200, middle.y, { steps: 4 });
	await page.mouse.up();
	expect((await shown(visit))[0]).toBeGreaterThan(zoomed[0]);
	expect(new URL(page.url()).search).toBe('');
	await page.keyboard.down('Shift');
	await page.mouse.down();
	await page.mouse.move(middle.x, middle.y, { steps: 4 });
	await page.mouse.up();
	await page.keyboard.up('Shift');
	expect(length(await shown(visit))).toBeLessThan(0.5 * length(zoomed));

	// keys: the whole ride, the read-out, the next event
	await strips.press('0');
	await expectPinchZooms(visit, middle);
	await strips.press('0');
	await strips.press('Home');
	expect(await readOut(visit, 'Time')).toBe('0:00');
	await strips.press('n');
	await page.getByRole('heading', { name: /^Event 1, / }).waitFor();
	await strips.press('n');
	await page.getByRole('heading', { name: /^Event 2, / }).waitFor();
	await strips.press('b');
	await page.getByRole('heading', { name: /^Event 1, / }).waitFor();
	// the strips know before the panel is drawn; wait for the window around the event
	await expect.poll(async () => length(await shown(visit))).toBeLessThan(60);

	// time and distance are two axes of one stretch
	const before = await shown(visit);
	await page.getByLabel('Distance', { exact: true }).check();
	expect(await page.locator('#strips-heading').innerText()).toContain('km');
	await page.getByLabel('Time', { exact: true }).check();
	expect(await shown(visit)).toEqual(before);

	// the open event is marked in the fan, on the track and in the list of events
	await page.getByText('Cadence against speed: where').click();
	await page.getByText('Where it was ridden').click();
	await page.getByText('The shown stretch as a table').click();
	const track = page.getByRole('img', { name: /^Track of the ride/ });
	await track.waitFor();
	await page.locator('.picked circle, circle.picked').first().waitFor();
	expect(await page.locator('circle.picked').count()).toBe(2);
	expect(await page.locator('tr[aria-current="true"] a.open').count()).toBe(1);

	// a row of the table moves the read-out of all
	const table = page.getByRole('region', { name: 'Values of the shown stretch' });
	const row = table.locator('tbody tr').nth(2);
	const time = (await row.getByRole('button').innerText()).trim();
	await row.getByRole('button').click();
	expect(await readOut(visit, 'Time')).toBe(time);
	expect(await row.getAttribute('aria-current')).toBe('true');

	// so does a dot of the fan: where the ring stood for that row, a second of that cadence lies
	const ring = page.locator('circle.ring');
	const placeOf = async () => [Number(await ring.getAttribute('cx')), Number(await ring.getAttribute('cy'))];
	const [thereX, thereY] = await placeOf();
	const cadence = await readOut(visit, 'Cadence');
	await table.locator('tbody tr').nth(9).getByRole('button').click();
	const [hereX, hereY] = await placeOf();
	expect([hereX, hereY]).not.toEqual([thereX, thereY]);
	await ring.evaluate((circle) => circle.scrollIntoView({ block: 'center' }));
	const here = (await ring.boundingBox())!;
	await page.mouse.click(here.x + here.width / 2 + thereX - hereX, here.y + here.height / 2 + thereY - hereY);
	await expect.poll(() => readOut(visit, 'Cadence')).toBe(cadence);

	// a place on the track too, and the window follows it
	const startRing = track.locator('.start');
	await startRing.scrollIntoViewIfNeeded();
	const start = (await startRing.boundingBox())!;
	await page.mouse.click(start.x + start.width / 2, start.y + start.height / 2);
	await expect.poll(async () => (await shown(visit))[0]).toBeLessThan(60);
	expect(seconds(await readOut(visit, 'Time'))).toBeLessThan(60);

	// a sign above the band opens its event again
	await page.getByRole('link', { name: 'Close' }).click();
	const band = page.getByRole('img', { name: /^The whole ride/ });
	await band.scrollIntoViewIfNeeded();
	const sign = (await band.locator('g').first().boundingBox())!;
	await page.mouse.click(sign.x + sign.width / 2, sign.y + sign.height / 2);
	await page.getByRole('heading', { name: /^Event 1, / }).waitFor();
	await expectRideChartsAreSaved(visit, ridePath);
	expect(visit.complaints).toEqual([]);
}

/** Two fingers apart show less of the ride, around what lay between them; together again, as much as before. */
async function expectPinchZooms(visit: Visit, middle: { x: number; y: number }): Promise<void> {
	const { page } = visit;
	const fingers = (apart: number) =>
		[
			{ x: middle.x - apart / 2, y: middle.y },
			{ x: middle.x + apart / 2, y: middle.y }
		] as const;
	const whole = await shown(visit);
	await pinch(page, fingers(100), fingers(400));
	await expect.poll(async () => length(await shown(visit)) / length(whole)).toBeCloseTo(1 / 4, 1);
	const [from, to] = await shown(visit);
	expect((from + to) / 2 / length(whole)).toBeCloseTo(0.5, 1);
	await pinch(page, fingers(400), fingers(200));
	await expect.poll(async () => length(await shown(visit)) / length(whole)).toBeCloseTo(1 / 2, 1);
}

/** Strips, fan and track to take away: drawings that need nothing else, and tables of what is shown. */
async function expectRideChartsAreSaved(visit: Visit, ridePath: string): Promise<void> {
	const { page } = visit;
	await page.goto(ridePath);
	await page.locator('[data-stage="shown"]').waitFor();
	// whichever counts in the rate comes first
	await page.locator('a.open').first().click();
	await page.getByRole('heading', { name: /^Event \d+, / }).waitFor();
	const saved = async (button: RegExp) => {
		const coming = page.waitForEvent('download');
		await page.getByRole('button', { name: button }).click();
		return readFileSync(await (await coming).path(), 'utf8');
	};
	const strips = await saved(/^Save ride \d+ \d.* as a drawing/);
	expect(strips).toContain('Crank angle gained on the wheel');
	// a line of the canvas, a hatch of the ground, a sign of the event; nothing that needs the page
	expect(strips).toMatch(/<path fill="none" stroke="#000" stroke-width="1.5"/);
	expect(strips).toContain('fill="url(#gained-hatch)"');
	expect(strips).toContain('fill-opacity="0.16"');
	// on the page the ground is pixels, before and after
	expect(await page.locator('[fill="url(#gained-hatch)"]').count()).toBe(0);
	expect(strips).not.toMatch(/var\(--|class=|<style|href=|rgb\(/);
	await page.getByText('Cadence against speed: where').click();
	expect(await saved(/cadence against speed as a drawing/)).toMatch(/^<svg xmlns=/);
	const table = (await saved(/^Save ride \d+ \d.* as a table/)).trim().split('\r\n');
	const [from, to] = await shown(visit);
	expect(table[0]).toMatch(/^time_s,distance_m,drive,gained_hub_deg/);
	expect(table.length - 1).toBe(to - from + 1);
	expect(Number(table[1].split(',')[0])).toBe(from);
}
