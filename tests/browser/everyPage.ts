import { expect } from 'vitest';
import { layoutTroubles } from './layoutTroubles';
import { DESK, PHONE, TABLET, ZOOMED, type Screen, type Visit } from './workshop';

/** Dozens of pages with all that is asked of each: minutes on a machine that is busy with much else. */
export const EVERY_PAGE_WITHIN_MS = 900_000;

/**
 * Opens each page as the visitor stands and asks of it what every page has to keep: nothing on the console,
 * nothing that the content security policy stops, nothing that axe finds, everything where it can be read and hit.
 */
export async function expectEveryPageIsSound(visit: Visit, paths: readonly string[]): Promise<void> {
	const found: string[] = [];
	for (const path of paths) {
		await openDrawn(visit, path);
		for (const violation of await visit.accessibility()) found.push(`${path} ${violation}`);
		for (const trouble of await troublesOf(visit)) found.push(`${path} ${trouble}`);
	}
	expect(found).toEqual([]);
	expect(visit.complaints).toEqual([]);
}

/** Opens each page and asks of it only that nothing overlaps or sticks out: for further sizes of the window. */
export async function expectLayoutHolds(visit: Visit, paths: readonly string[]): Promise<void> {
	const found: string[] = [];
	for (const path of paths) {
		await openDrawn(visit, path);
		for (const trouble of await troublesOf(visit)) found.push(`${path} ${trouble}`);
	}
	expect(found).toEqual([]);
}

async function openDrawn({ page }: Visit, path: string): Promise<void> {
	await page.goto(path, { waitUntil: 'networkidle' });
	const drawing = page.locator('[data-stage]');
	if ((await drawing.count()) > 0) await page.locator('[data-stage="shown"]').waitFor();
}

/** below this width a page is used with a finger */
const PHONE_UP_TO = 500;

/** of the page as it opens, and with everything folded open: forms lie in folds */
async function troublesOf({ page }: Visit): Promise<string[]> {
	const fingers = (page.viewportSize()?.width ?? 0) < PHONE_UP_TO;
	const closed = await layoutTroubles(page, fingers);
	await page.evaluate(async () => {
		for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details')) fold.open = true;
		await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
	});
	return [...new Set([...closed, ...(await layoutTroubles(page, fingers))])];
}

/** The windows that every page is looked at in, with what is asked of it there. */
export const EVERY_SCREEN: readonly (readonly [string, Screen, typeof expectEveryPageIsSound])[] = [
	['a desk', DESK, expectEveryPageIsSound],
	['a desk in the dark', { ...DESK, colorScheme: 'dark' }, expectEveryPageIsSound],
	['a phone', PHONE, expectEveryPageIsSound],
	['a tablet', TABLET, expectLayoutHolds],
	['a desk at 200 % zoom', ZOOMED, expectLayoutHolds]
];
