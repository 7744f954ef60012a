import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { STRIP_MARGIN } from '../../src/lib/charts/strip';
import { startEmpty } from './firstSteps';
import { apart, axisOf, canvases, marksOf, movedFrames, watchScheme, withInk } from './canvasPixels';
import { steadyRide } from './steadyRide';
import { DESK, openWorkshop, watch, type Visit, type Workshop } from './workshop';

describe('strips that are painted beside the page', () => {
	let workshop: Workshop;
	let desk: Visit;
	let ride: string;
	let ink: string;

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
		const { page } = desk;
		await startEmpty(desk, 'Bo Nobody');
		await page.goto('/rides');
		await page.locator('input[type=file][accept]').setInputFiles({
			name: 'steady.tcx',
			mimeType: 'application/xml',
			buffer: steadyRide(Date.UTC(2026, 4, 3, 9), 900, 450, 600)
		});
		const link = page.locator('table a[href^="/rides/"]').first();
		await link.waitFor({ timeout: 60_000 });
		ride = (await link.getAttribute('href'))!;
		await openRide(desk);
		ink = await inkOf(page);
	});
	afterAll(() => workshop?.close());

	async function openRide({ page }: Visit) {
		await page.goto(ride);
		await page.locator('[data-stage="shown"]').waitFor();
	}
	/** the ink of lines as a canvas has it */
	const inkOf = (page: Page) =>
		page.evaluate(() => {
			const probe = document.createElement('i');
			probe.style.color = 'var(--ink)';
			document.body.append(probe);
			const parts = getComputedStyle(probe).color.match(/\d+/g)!;
			probe.remove();
			return [...parts.slice(0, 3), 255].join();
		});
	/** another page of the same person, in a browser that lacks something */
	async function another(options: BrowserContextOptions, prepare: (page: Page) => Promise<unknown>) {
		const context = await desk.context.browser()!.newContext({
			baseURL: workshop.origin,
			storageState: await desk.context.storageState(),
			locale: 'en-GB',
			timezoneId: 'Europe/Berlin',
			viewport: DESK,
			reducedMotion: 'reduce',
			...options
		});
		const visit = watch(await context.newPage(), context, workshop.origin);
		await prepare(visit.page);
		await openRide(visit);
		return visit;
	}
	const painted = (page: Page, colour = ink) =>
		expect.poll(async () => withInk(await canvases(page, colour)), { timeout: 20_000 });

	it('shows all lines, and others when the window moves', async () => {
		const { page, complaints } = desk;
		await painted(page).toBeGreaterThanOrEqual(5);
		expect(page.workers()).toHaveLength(1);
		// the axis is in the picture, words and all: the page has none to move
		const axis = await axisOf(page);
		expect(axis.words).toBe(0);
		expect(axis.pixels).toBeGreaterThan(500);
		// so are signs and marks
		const marks = await marksOf(page);
		expect(marks.columns).toBe(1);
		expect(marks.drawn).toBe(0);
		const whole = await canvases(page);
		const strips = page.getByRole('slider');
		await strips.press('+');
		await strips.press('+');
		await expect.poll(async () => apart(page, await canvases(page), whole)).toBeGreaterThan(0.001);
		await strips.press('0');
		await expect.poll(async () => apart(page, await canvases(page), whole)).toBe(0);
		expect(complaints).toEqual([]);
	});

	it('shows lines and what stands beside them of the same window in every frame', async () => {
		const { page, complaints } = desk;
		const strips = page.getByRole('slider');
		await strips.press('0');
		const box = (await strips.boundingBox())!;
		await page.mouse.move(box.x + 0.5 * box.width, box.y + 150);
		await strips.press('+');
		await strips.press('+');
		await expect.poll(async () => withInk(await canvases(page, ink))).toBeGreaterThanOrEqual(5);
		const frames = await movedFrames(page, ink);
		const moved = frames.filter(({ line }, i) => i > 0 && Math.abs(line - frames[i - 1].line) > 10);
		expect(moved.length).toBeGreaterThan(30);
		const gaps = frames.map(({ line, step }) => line - step);
		expect(frames.filter(({ step }) => step < 0)).toEqual([]);
		// the read-out stays where it is in the ride, and so does the step of the power
		expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(2.5);
		await strips.press('0');
		expect(complaints).toEqual([]);
	});

	it('fills canvases of another width', async () => {
		const { page } = desk;
		await page.setViewportSize({ width: 900, height: 1000 });
		const wide = async () => {
			const [box, [, second]] = [(await page.getByRole('slider').boundingBox())!, await canvases(page)];
			// without the room for figures beside the lines; the first has signs beyond them, too
			return Math.abs(box.width - STRIP_MARGIN.left - STRIP_MARGIN.right - second.width);
		};
		await expect.poll(wide).toBeLessThanOrEqual(1);
		await painted(page).toBeGreaterThanOrEqual(5);
		await page.setViewportSize(DESK);
		await expect.poll(wide).toBeLessThanOrEqual(1);
	});

	it('is seen in no frame in the inks of the colour scheme before', async () => {
		const { page, complaints } = desk;
		await painted(page).toBeGreaterThanOrEqual(5);
		const count = (await canvases(page)).length;
		await page.emulateMedia({ colorScheme: 'dark' });
		const dark = await inkOf(page);
		expect(dark).not.toBe(ink);
		await painted(page, dark).toBeGreaterThanOrEqual(5);
		for (const [colorScheme, before, after] of [
			['light', dark, ink],
			['dark', ink, dark],
			['light', dark, ink]
		] as const) {
			const frames = await watchScheme(page, { before, after });
			await page.emulateMedia({ colorScheme });
			for (const frame of await frames()) {
				expect(frame.before).toBe(0);
				expect(frame.after).toBeGreaterThanOrEqual(5);
			}
		}
		// what the page drew meanwhile has gone again
		await expect.poll(async () => (await canvases(page)).length).toBe(count);
		expect(complaints).toEqual([]);
	});

	it('follows the colour scheme, and prints from a dark screen in the inks of paper at once', async () => {
		const { page, complaints } = desk;
		await page.emulateMedia({ colorScheme: 'dark' });
		const light = await inkOf(page);
		expect(light).not.toBe(ink);
		await painted(page, light).toBeGreaterThanOrEqual(5);
		await page.evaluate(() => {
			const shown: string[] = [];
			matchMedia('print').addEventListener('change', () => {
				// the page's own listeners have run: nothing is awaited any more
				for (const canvas of document.querySelectorAll<HTMLCanvasElement>('[role="slider"] canvas')) {
					const copy = new OffscreenCanvas(canvas.width, canvas.height).getContext('2d')!;
					copy.drawImage(canvas, 0, 0);
					const { data } = copy.getImageData(0, 0, canvas.width, canvas.height);
					let black = 0;
					for (let at = 0; at < data.length; at += 4)
						if (data[at] + data[at + 1] + data[at + 2] === 0 && data[at + 3] > 60) black++;
					shown.push(`${canvas.width > 500} ${black > 100}`);
				}
			});
			Object.assign(globalThis, { shownOnPaper: shown });
		});
		await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
		const drawn = async () => {
			const shown = await page.evaluate(
				() => (globalThis as unknown as { shownOnPaper: string[] }).shownOnPaper
			);
			return shown.filter((canvas) => canvas === 'true true').length;
		};
		await expect.poll(drawn).toBeGreaterThanOrEqual(5);
		await page.emulateMedia({ colorScheme: 'light', media: null });
		await painted(page).toBeGreaterThanOrEqual(5);
		expect(complaints).toEqual([]);
	});

	it('shows the same where a browser has no such threads', async () => {
		const visit = await another({}, (page) =>
			page.addInitScript(() => Reflect.deleteProperty(globalThis, 'Worker'))
		);
		await painted(visit.page).toBeGreaterThanOrEqual(5);
		await expect
			.poll(async () => apart(visit.page, await canvases(visit.page), await canvases(desk.page)))
			.toBeLessThan(1e-4);
		expect(visit.page.workers()).toEqual([]);
		expect(visit.complaints).toEqual([]);
		await visit.context.close();
	});

	it('shows the same where the thread cannot be fetched', async () => {
		const visit = await another({}, (page) => page.route('**/workers/**', (route) => route.abort()));
		await painted(visit.page).toBeGreaterThanOrEqual(5);
		await expect
			.poll(async () => apart(visit.page, await canvases(visit.page), await canvases(desk.page)))
			.toBeLessThan(1e-4);
		await visit.context.close();
	});

	it('says what is read out also while the thread has yet to begin, and when its first pictures come', async () => {
		const { page, context } = await another({}, (page) =>
			page.route('**/workers/**', async (route) => {
				await new Promise((later) => setTimeout(later, 1500));
				await route.continue();
			})
		);
		await page.getByRole('slider').focus();
		await page.keyboard.press('ArrowRight');
		const said = page.evaluate(
			() =>
				new Promise<string[]>((done) => {
					const slider = document.querySelector('[role=slider]')!;
					const words = new Set<string>();
					const until = performance.now() + 4000;
					const look = () => {
						words.add(slider.getAttribute('aria-valuetext')!);
						if (performance.now() < until) requestAnimationFrame(look);
						else done([...words]);
					};
					look();
				})
		);
		await painted(page).toBeGreaterThanOrEqual(5);
		for (const words of await said) expect(words).toMatch(/; Distance .*Speed/);
		await context.close();
	});
});
