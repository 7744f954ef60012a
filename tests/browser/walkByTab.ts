import type { Page } from 'playwright-core';

/** More presses than any page of an empty ledger has controls. */
const MOST_PRESSES = 200;

/**
 * Walks through a page by the Tab key alone, from its start until the keys leave it, and says what is wrong, one a
 * line: a control that is never reached, one that has the focus and does not show it, one that stays out of sight,
 * or a place that holds the keys.
 */
export async function walkByTab(page: Page): Promise<string[]> {
	await page.evaluate(() => {
		(document.activeElement as HTMLElement | null)?.blur();
		getSelection()?.removeAllRanges();
		scrollTo(0, 0);
	});
	const troubles: string[] = [];
	const reached = new Set<string>();
	let last = '';
	for (let press = 0; press < MOST_PRESSES; press++) {
		await page.keyboard.press('Tab');
		const at = await page.evaluate(focused);
		if (at !== null && at.place === last) {
			troubles.push(`${at.name} holds the keys`);
			break;
		}
		if (at === null || reached.has(at.place)) break;
		if (!at.marked) troubles.push(`${at.name} has the focus and does not show it`);
		if (!at.inSight) troubles.push(`${at.name} has the focus out of sight`);
		reached.add((last = at.place));
	}
	const all = await page.evaluate(controls);
	for (const { place, name } of all) if (!reached.has(place)) troubles.push(`${name} is not reached by Tab`);
	return troubles;
}

/** Runs in the page: where the focus is, and whether somebody sees it. */
function focused() {
	const element = document.activeElement as HTMLElement | null;
	if (!element || element === document.body || element === document.documentElement) return null;
	const style = getComputedStyle(element);
	const box = element.getBoundingClientRect();
	const all = [...document.querySelectorAll('*')];
	return {
		place: String(all.indexOf(element)),
		name: `${element.tagName.toLowerCase()} "${(element.innerText || element.getAttribute('aria-label') || element.getAttribute('name') || '').trim().slice(0, 40)}"`,
		// the browser's own ring ("auto") counts, whatever width it names
		marked:
			style.outlineStyle === 'auto' || (style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2),
		inSight:
			box.width > 0 && box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth
	};
}

/** Runs in the page: everything that can be pressed or filled in, but for choices that arrow keys reach. */
function controls() {
	const all = [...document.querySelectorAll('*')];
	return [
		...document.querySelectorAll<HTMLElement>(
			'a[href], button, input:not([type="hidden"], [type="radio"]), select, textarea, summary'
		)
	]
		.filter(
			(element) =>
				element.tabIndex >= 0 &&
				!(element as HTMLButtonElement).disabled &&
				element.checkVisibility({ visibilityProperty: true })
		)
		.map((element) => ({
			place: String(all.indexOf(element)),
			name: `${element.tagName.toLowerCase()} "${(element.innerText || element.getAttribute('aria-label') || element.getAttribute('name') || '').trim().slice(0, 40)}"`
		}));
}
