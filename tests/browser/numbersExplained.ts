import { expect } from 'vitest';
import type { Page } from 'playwright-core';
import type { Visit } from './workshop';

/** Pages whose figures a decision may rest on. */
export const EXPLAINED = ['/', '/compare', '/builds/3/release', '/report?before=1&after=3', '/versions'];

/** What bears digits and is no figure: dates, clocks, numbers of versions, codes of people, marks of parts, names. */
const NO_FIGURE = [
	/\b\d{1,2} [A-Z][a-z]+ \d{4}(, \d{2}:\d{2})?/g,
	/\b(Wheel|Prototype|Touring bike|Event|event|revision|Revision|Version|version|Finding|Page|ISO|IEC|MIL-HDBK-) ?\d+C?/g,
	/\b[PR]\d+\b/g,
	/\bEX-[A-Z0-9-]+/g,
	/\S+\.fit\b/g,
	// plain counts of plain things
	/\b[\d,]+ (more |further |of )?(rides?|events?|wheels?|riders?|laps?|plans?|builds?|files?|criteria|wheel|of \d+ criteria)\b/g,
	/\b\d+ of \d+ criteria\b/g
];

/**
 * Figures on the page as it stands whose meaning is not one press away, one a line. A figure in a table needs a word
 * with a meaning at the head of its row or column; any other needs one in its own section, card, drawing or entry.
 * What people typed (`data-as-written`), what explains by itself (`data-explains`), what is to be filled in and what a press leads to are left alone.
 */
export async function numbersWithoutMeaning(page: Page): Promise<string[]> {
	const noFigure = NO_FIGURE.map(({ source, flags }) => ({ source, flags }));
	return page.evaluate((noFigure) => {
		const LEFT_ALONE =
			'svg, code, time, pre, form, input, select, option, textarea, h1, h2, h3, legend, summary, a, button, nav, .card, .unseen, [data-as-written], [data-explains], aside';
		const PLACES = 'article, section, figure, details, dl > div, .sheet';
		const found = new Set<string>();
		const texts = document.createTreeWalker(document.querySelector('main')!, NodeFilter.SHOW_TEXT);
		for (let node = texts.nextNode(); node; node = texts.nextNode()) {
			const element = node.parentElement!;
			const text = noFigure.reduce(
				(rest, { source, flags }) => rest.replace(new RegExp(source, flags), ''),
				// a figure that is set off by itself is told by the words around it
				((element.matches('strong, b') ? element.parentElement : node)?.textContent ?? '').replaceAll(
					'\u00a0',
					' '
				)
			);
			if (!/\d/.test(text) || element.closest(LEFT_ALONE) || !element.checkVisibility()) continue;
			const cell = element.closest<HTMLTableCellElement>('td, th');
			const explained = cell ? headsOf(cell).some(holdsMeaning) : placesOf(element).some(holdsMeaning);
			if (!explained) found.add(text.trim().slice(0, 80));
		}
		return [...found];

		function holdsMeaning(place: Element | null | undefined): boolean {
			return Boolean(place?.querySelector('.meaning'));
		}
		function headsOf(cell: HTMLTableCellElement): (Element | null | undefined)[] {
			const table = cell.closest('table')!;
			return [
				cell,
				cell.parentElement!.querySelector('th[scope="row"]'),
				table.tHead?.rows[0]?.cells[cell.cellIndex],
				table.caption
			];
		}
		function placesOf(element: Element): Element[] {
			const sentence = element.closest('p, figcaption');
			const nearest = element.closest(PLACES);
			// what stands beside a section's figures in a list or a drawing belongs to the section
			const around = nearest?.matches('figure, article, details, dl > div')
				? nearest.parentElement?.closest('section')
				: null;
			return [sentence, nearest, around].filter((place) => place !== null && place !== undefined);
		}
	}, noFigure);
}

/** Asks of a page that every figure on it is explained, and of this very question that it finds one that is not. */
export async function expectFiguresExplained({ page }: Visit, path: string): Promise<void> {
	await page.goto(path, { waitUntil: 'networkidle' });
	expect(await numbersWithoutMeaning(page)).toEqual([]);
	await page.evaluate(() => {
		const figure = document.createElement('section');
		figure.textContent = 'It slips 7.4 times';
		document.querySelector('main')!.append(figure);
	});
	expect(await numbersWithoutMeaning(page)).toEqual(['It slips 7.4 times']);
}
