import type { Page } from 'playwright-core';

/** More presses than any page has controls. */
const MOST_PRESSES = 900;
/** What lies this much higher than the control before, in the same column, is out of order; lines of text overlap. */
const UP_PX = 8;

/**
 * Walks through a page by the Tab key alone, from its start until the keys leave it, and says what is wrong, one a
 * line: a control that is never reached, one that has the focus and does not show it, one that stays out of sight,
 * one that lies above the one before it in the same column, or a place that holds the keys.
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
	let again = 0;
	let before: Place | null = null;
	for (let press = 0; press < MOST_PRESSES; press++) {
		await page.keyboard.press('Tab');
		const at = await page.evaluate(focused);
		// a field for day and time has several stops of its own
		if (at !== null && at.place === last && at.parts > ++again) continue;
		again = 0;
		if (at !== null && at.place === last) {
			troubles.push(`${at.name} holds the keys`);
			break;
		}
		if (at === null || reached.has(at.place)) break;
		if (!at.marked) troubles.push(`${at.name} has the focus and does not show it`);
		if (!at.inSight) troubles.push(`${at.name} has the focus out of sight`);
		if (before && isAbove(at, before))
			troubles.push(`${at.name} lies above ${before.name}, which comes before it`);
		before = at;
		reached.add((last = at.place));
	}
	const all = await page.evaluate(controls);
	for (const { place, name } of all) if (!reached.has(place)) troubles.push(`${name} is not reached by Tab`);
	return troubles;
}

interface Place {
	readonly inFlow: boolean;
	readonly top: number;
	readonly bottom: number;
	readonly left: number;
	readonly right: number;
	readonly name: string;
}

/** on the page, not in the window; what floats above the page has no place in it */
function isAbove(at: Place, before: Place): boolean {
	const oneColumn = at.left < before.right && before.left < at.right;
	return (
		at.inFlow && before.inFlow && oneColumn && at.bottom <= before.top + 1 && at.top < before.top - UP_PX
	);
}

/** Runs in the page: where the focus is, and whether somebody sees it. */
function focused() {
	const element = document.activeElement as HTMLElement | null;
	if (!element || element === document.body || element === document.documentElement) return null;
	const style = getComputedStyle(element);
	const box = element.getBoundingClientRect();
	// a number that stays with its element, whatever is added to the page meanwhile
	const numbered = globalThis as { walked?: Map<Element, number> };
	const walked = (numbered.walked ??= new Map());
	if (!walked.has(element)) walked.set(element, walked.size);
	let inFlow = true;
	for (let up: Element | null = element; up; up = up.parentElement)
		if (['fixed', 'sticky'].includes(getComputedStyle(up).position)) inFlow = false;
	return {
		inFlow,
		parts: /^(date|time|datetime-local)$/.test(element.getAttribute('type') ?? '') ? 9 : 0,
		top: box.top + scrollY,
		bottom: box.bottom + scrollY,
		left: box.left,
		right: box.right,
		place: String(walked.get(element)),
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
	const { walked } = globalThis as { walked?: Map<Element, number> };
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
			place: String(walked?.get(element)),
			name: `${element.tagName.toLowerCase()} "${(element.innerText || element.getAttribute('aria-label') || element.getAttribute('name') || '').trim().slice(0, 40)}"`
		}));
}
