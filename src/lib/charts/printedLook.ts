import { INKS, inkOf } from './inkOf';

/** What a file needs of an element's style, with what SVG takes where nothing is said. */
const LOOK: Readonly<Record<string, readonly string[]>> = {
	fill: ['rgb(0, 0, 0)'],
	'fill-opacity': ['1'],
	stroke: ['none'],
	'stroke-width': ['1px', '1'],
	'stroke-opacity': ['1'],
	'stroke-dasharray': ['none'],
	'stroke-linejoin': ['miter'],
	'stroke-linecap': ['butt'],
	opacity: ['1'],
	'paint-order': ['normal'],
	'font-size': [],
	'font-weight': ['400'],
	'font-style': ['normal'],
	'text-anchor': ['start']
};
const OF_TEXT = new Set(['font-size', 'font-weight', 'font-style', 'text-anchor', 'paint-order']);

/**
 * The look of an element as attributes, its inks those of print: a drawing from a dark screen is read on paper.
 *
 * @param style as the browser has computed it
 * @param inks the screen's colours -> printed ones, as `screenInks` gives them
 */
export function printedLook(
	style: Pick<CSSStyleDeclaration, 'getPropertyValue'>,
	isText: boolean,
	inks: ReadonlyMap<string, string>
): [string, string][] {
	return Object.entries(LOOK).flatMap(([name, initial]) => {
		if (OF_TEXT.has(name) && !isText) return [];
		const value = style.getPropertyValue(name).trim();
		if (!value || initial.includes(value)) return [];
		const printed = inks.get(value) ?? value;
		const parts = /^(#[\da-f]{6})([\da-f]{2})$/i.exec(printed);
		if (!parts) return [[name, printed.replace(/^url\("(#[^"]+)"\)$/, 'url($1)')] as [string, string]];
		const share = String(Math.round((1000 * parseInt(parts[2], 16)) / 255) / 1000);
		return [[name, parts[1]] as [string, string], [`${name}-opacity`, share] as [string, string]];
	});
}

/**
 * Which printed ink stands for which colour of the screen.
 *
 * @param resolve what the browser makes of a token's colour, "rgb(35, 39, 43)"
 */
export function screenInks(resolve: (token: string) => string): Map<string, string> {
	// written last, ink wins where two tokens share a colour
	return new Map([...INKS].reverse().map((name) => [resolve(name), inkOf(name)]));
}
