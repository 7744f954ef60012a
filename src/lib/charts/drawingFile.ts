import { flushSync } from 'svelte';
import type { Inks } from './canvasInks.svelte';
import { drawnWhole } from './drawnWhole.svelte';
import { inkOf } from './inkOf';
import { layerDrawings } from './layerDrawings';
import { printedLook, screenInks } from './printedLook';
import { wrapped } from './wrapped';
import { svgPen } from './svgPen';
import { toTenth } from './toTenth';

const NAMESPACE = 'http://www.w3.org/2000/svg';
const FACES = "'Source Sans 3', system-ui, sans-serif";
const PRINT_INKS: Inks = {
	ink: inkOf('ink'),
	soft: inkOf('rule-strong'),
	accent: inkOf('accent'),
	wash: inkOf('accent-wash'),
	rule: inkOf('rule'),
	sheet: inkOf('sheet'),
	sunken: inkOf('sunken'),
	words: inkOf('soft'),
	faces: FACES
};

/**
 * What is drawn below an element, as one SVG file that stands by itself: places as on the page, inks of print, no
 * style sheet, canvases drawn once more as paths. Paragraphs of the class "name" become its captions.
 *
 * @param title said by the file, and written nowhere
 */
export function drawingFile(root: HTMLElement, title: string): string {
	// what is painted on the screen is drawn while it is copied
	flushSync(() => (drawnWhole.asked = true));
	try {
		return fileOf(root, title);
	} finally {
		drawnWhole.asked = false;
	}
}

function fileOf(root: HTMLElement, title: string): string {
	const inks = screenInks(resolver(root));
	const area = root.getBoundingClientRect();
	const parts: string[] = [];
	let canvases = 0;
	for (const element of root.querySelectorAll('svg, canvas, p.name')) {
		// nested drawings go with the one that holds them
		if (element.parentElement?.closest('svg')) continue;
		// a canvas may hold a part of its drawing alone, but is drawn as a whole
		const shown = element instanceof HTMLCanvasElement ? element.parentElement! : element;
		const box = shown.getBoundingClientRect();
		if (box.width === 0 || box.height === 0) continue;
		const [x, y] = [toTenth(box.left - area.left), toTenth(box.top - area.top)];
		if (element instanceof HTMLParagraphElement) parts.push(caption(element, x, y, inks));
		else if (element instanceof SVGSVGElement) parts.push(svgPart(element, box, x, y, inks));
		else {
			const pen = svgPen(`layer-${canvases++}`);
			layerDrawings.get(element)?.(pen.context, PRINT_INKS);
			parts.push(`<g transform="translate(${x},${y})">${pen.svg()}</g>`);
		}
	}
	const size = `${toTenth(area.width)} ${toTenth(area.height)}`;
	return [
		`<svg xmlns="${NAMESPACE}" viewBox="0 0 ${size}" width="${toTenth(area.width)}" height="${toTenth(area.height)}" font-family="${FACES}">`,
		`<title>${escaped(title)}</title>`,
		`<rect width="100%" height="100%" fill="${inkOf('ground')}"/>`,
		...parts,
		'</svg>\n'
	].join('\n');
}

/** what the browser makes of a token's colour where the drawing stands */
function resolver(root: HTMLElement): (token: string) => string {
	const probe = document.createElementNS(NAMESPACE, 'svg');
	return (token) => {
		probe.style.setProperty('fill', `var(--${token})`);
		root.append(probe);
		const { fill } = getComputedStyle(probe);
		probe.remove();
		return fill;
	};
}

function svgPart(
	element: SVGSVGElement,
	box: DOMRect,
	x: number,
	y: number,
	inks: ReadonlyMap<string, string>
): string {
	const copy = element.cloneNode(true) as SVGSVGElement;
	dress(element, copy, inks);
	for (const name of [...copy.attributes].map(({ name }) => name))
		if (/^(role|class|style|aria-)/.test(name)) copy.removeAttribute(name);
	copy.setAttribute('x', String(x));
	copy.setAttribute('y', String(y));
	copy.setAttribute('width', String(toTenth(box.width)));
	copy.setAttribute('height', String(toTenth(box.height)));
	return new XMLSerializer().serializeToString(copy).replace(/<!--.*?-->/g, '');
}

/** writes the look of an element and all below it into its copy */
function dress(from: Element, to: Element, inks: ReadonlyMap<string, string>): void {
	const style = getComputedStyle(from);
	const isText = from.tagName === 'text' || from.tagName === 'tspan';
	to.removeAttribute('class');
	for (const [name, value] of printedLook(style, isText, inks)) to.setAttribute(name, value);
	for (let i = 0; i < from.children.length; i++) dress(from.children[i], to.children[i], inks);
}

function caption(element: Element, x: number, y: number, inks: ReadonlyMap<string, string>): string {
	const style = getComputedStyle(element);
	const ink = inks.get(style.color) ?? inkOf('ink');
	const padding = parseFloat(style.paddingLeft) || 0;
	const line = (parseFloat(style.paddingTop) || 0) + parseFloat(style.fontSize);
	const size = parseFloat(style.fontSize);
	// letters of the font that a reader has may be wider than the page's
	const letters = Math.floor((element.getBoundingClientRect().width - 2 * padding) / (0.54 * size));
	const lines = wrapped((element.textContent ?? '').replace(/\s+/g, ' ').trim(), letters);
	return lines
		.map(
			(words, index) =>
				`<text x="${x + padding}" y="${toTenth(y + line + 1.3 * size * index)}" font-size="${style.fontSize}" fill="${ink}">${escaped(words)}</text>`
		)
		.join('');
}

function escaped(text: string): string {
	return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
