import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { parse } from 'svelte/compiler';

/** attributes and props that hold an address */
export const ADDRESSES = new Set(['href', 'src', 'action', 'formaction', 'poster']);

/**
 * Puts the prefix before the addresses that stand in a page's markup: href="/rides" becomes href="/slips/rides" as the
 * page is compiled, so that no page carries code for it. What comes from data is the page's to do, with PREFIX.
 *
 * @param {string} prefix
 * @returns {import('svelte/compiler').PreprocessorGroup}
 */
export function prefixPages(prefix) {
	return {
		name: 'prefix-pages',
		markup: ({ content, filename }) => ({ code: withPrefix(content, prefix, filename) })
	};
}

/**
 * @param {string} source of a component
 * @param {string} prefix
 * @param {string} [filename]
 * @returns {string} the same, line by line, with the prefix in every address that begins with a slash
 */
export function withPrefix(source, prefix, filename) {
	/** @type {Set<number>} */
	const places = new Set();
	walk(parse(source, { modern: true, filename }).fragment, places, source);
	let out = source;
	for (const place of [...places].sort((a, b) => b - a))
		out = out.slice(0, place) + prefix + out.slice(place);
	return out;
}

/**
 * @param {unknown} node
 * @param {Set<number>} places where addresses begin
 * @param {string} source
 */
function walk(node, places, source) {
	if (node === null || typeof node !== 'object') return;
	if (Array.isArray(node)) return node.forEach((one) => walk(one, places, source));
	const { type, name, value } = /** @type {Record<string, unknown>} */ (node);
	if (type === 'Attribute' && ADDRESSES.has(String(name))) {
		const first = Array.isArray(value) ? value[0] : value;
		if (first?.type === 'Text') mark(first.start, places, source);
		else if (first?.type === 'ExpressionTag') markExpression(first.expression, places, source);
	}
	for (const child of Object.values(node)) walk(child, places, source);
}

/**
 * @param {any} node
 * @param {Set<number>} places
 * @param {string} source
 */
function markExpression(node, places, source) {
	if (node.type === 'Literal' && typeof node.value === 'string') mark(node.start + 1, places, source);
	else if (node.type === 'TemplateLiteral') mark(node.start + 1, places, source);
	else if (node.type === 'ConditionalExpression')
		for (const one of [node.consequent, node.alternate]) markExpression(one, places, source);
	else if (node.type === 'LogicalExpression')
		for (const one of [node.left, node.right]) markExpression(one, places, source);
}

/**
 * @param {number} at
 * @param {Set<number>} places
 * @param {string} source
 */
function mark(at, places, source) {
	if (source[at] === '/' && source[at + 1] !== '/') places.add(at);
}

/**
 * The page for what is refused before any page, written once more for a prefix: the framework fills nothing into it but
 * status and message.
 *
 * @param {string} from
 * @param {string} to where the copy goes
 * @param {string} prefix
 * @returns {string} `to`
 */
export function prefixErrorPage(from, to, prefix) {
	mkdirSync(dirname(to), { recursive: true });
	writeFileSync(to, readFileSync(from, 'utf8').replaceAll('href="/', `href="${prefix}/`));
	return to;
}
