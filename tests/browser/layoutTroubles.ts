import type { Page } from 'playwright-core';

/** Smallest side of anything that a finger has to hit, CSS pixels: --target of the tokens. */
const TARGET = 44;

/**
 * What is wrong with where things lie on the page as it stands, one a line: the page is wider than the window, two
 * controls overlap, fields of a row stand at different heights, or (where a finger points) a control is too small. Links inside sentences and words with a
 * meaning may be as small as their text (WCAG 2.2, criterion 2.5.8: inline).
 *
 * @param fingers whether controls have to be large enough for a finger
 */
export async function layoutTroubles(page: Page, fingers: boolean): Promise<string[]> {
	return page.evaluate(
		({ fingers, TARGET }) => {
			const troubles: string[] = [];
			const root = document.documentElement;
			const overhang = root.scrollWidth - root.clientWidth;
			if (overhang > 0) troubles.push(`the page is ${overhang} px wider than the window`);

			const floats = (element: Element | null): boolean => {
				for (let at = element; at; at = at.parentElement)
					if (['sticky', 'fixed'].includes(getComputedStyle(at).position)) return true;
				return false;
			};
			// what a box that scrolls by itself has cut off lies on nothing
			const shownPart = (element: Element, whole: DOMRect) => {
				let { left, top, right, bottom } = whole;
				for (let at = element.parentElement; at && at !== root; at = at.parentElement) {
					if (getComputedStyle(at).overflowX === 'visible') continue;
					const box = at.getBoundingClientRect();
					[left, right] = [Math.max(left, box.left), Math.min(right, box.right)];
					[top, bottom] = [Math.max(top, box.top), Math.min(bottom, box.bottom)];
				}
				return { left, top, right, bottom };
			};
			const seen = [
				...document.querySelectorAll<HTMLElement>(
					'a[href], button, input:not([type="hidden"]), select, textarea, summary'
				)
			].filter(
				(element) =>
					element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) &&
					!element.closest('.unseen, .skip') &&
					!floats(element)
			);
			const named = (element: HTMLElement) =>
				`${element.tagName.toLowerCase()} "${(element.getAttribute('aria-label') ?? element.innerText ?? '').trim().slice(0, 40) || element.getAttribute('name')}"`;

			const boxes = seen.flatMap((element) =>
				[...element.getClientRects()]
					.map((rect) => ({ element, rect: shownPart(element, rect) }))
					.filter(({ rect }) => rect.right - rect.left > 1 && rect.bottom - rect.top > 1)
			);
			boxes.sort((a, b) => a.rect.top - b.rect.top);
			const slack = 1.5;
			for (let i = 0; i < boxes.length; i++) {
				const { element, rect } = boxes[i];
				for (let k = i + 1; k < boxes.length && boxes[k].rect.top < rect.bottom - slack; k++) {
					const other = boxes[k];
					if (element.contains(other.element) || other.element.contains(element)) continue;
					const across =
						Math.min(rect.right, other.rect.right) - Math.max(rect.left, other.rect.left) > slack;
					const along = Math.min(rect.bottom, other.rect.bottom) - other.rect.top > slack;
					if (across && along) troubles.push(`${named(element)} overlaps ${named(other.element)}`);
				}
			}

			// names of a row on one line, fields on the next: what is said of a field stands under it
			for (const row of document.querySelectorAll('.form-row, .fields')) {
				const fields = [...row.querySelectorAll<HTMLElement>(':scope > label:not(.check)')].flatMap(
					(label) => {
						const field = label.querySelector<HTMLElement>(':scope > :is(input, select, textarea)');
						return field?.checkVisibility() ? [{ label, field }] : [];
					}
				);
				const top = (element: HTMLElement) => element.getBoundingClientRect().top;
				fields.slice(1).forEach(({ label, field }, i) => {
					const before = fields[i];
					if (Math.abs(top(label) - top(before.label)) > slack) return;
					if (Math.abs(top(field) - top(before.field)) > slack)
						troubles.push(`${named(field)} stands at another height than ${named(before.field)} beside it`);
				});
			}
			if (!fingers) return troubles;

			const inSentence = (element: HTMLElement) =>
				element.matches('.meaning') ||
				(element.matches('a') && getComputedStyle(element).display === 'inline');
			for (const element of seen) {
				if (inSentence(element)) continue;
				// a box to tick is hit by its label
				const hit = element.matches('[type="checkbox"], [type="radio"], [type="file"]')
					? (element.closest('label') ?? element)
					: element;
				const { width, height } = hit.getBoundingClientRect();
				if (height > 0 && height < TARGET - 0.5)
					troubles.push(
						`${named(element)} is ${Math.round(width)} x ${Math.round(height)} px, too small for a finger`
					);
			}
			return troubles;
		},
		{ fingers, TARGET }
	);
}
