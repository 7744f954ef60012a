import type { Component } from 'svelte';
import { render } from 'svelte/server';
import { inkOf } from '$lib/charts/inkOf';
import { styleOfChart } from './styleOfChart';

/** Sources of the chart components, for their style blocks. */
const SOURCES = import.meta.glob<string>('/src/lib/charts/*.svelte', {
	query: '?raw',
	import: 'default',
	eager: true
});

/**
 * A chart of the pages as a file of its own: the same component, rendered at the server, with a title, a
 * white ground and its inks written as plain colours.
 *
 * @param names of the components that have a style, in the order in which they first draw something
 */
export function standaloneSvg<Props extends Record<string, unknown>>(
	chart: Component<Props>,
	props: Props,
	names: readonly string[],
	title: string
): string {
	const { body } = render(chart as Component<Record<string, unknown>>, { props });
	const svg = body.replace(/<!--[\s\S]*?-->/g, '').trim();
	const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
	const scopes = new Set(svg.match(/svelte-[a-z0-9]+/g));
	const inner = svg.replace(/^<svg[^>]*>/, '').replace(/<\/svg>$/, '');
	const style = [...scopes].map((scope, place) => styleOfChart(sourceOf(names[place]), scope)).join('\n');
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="'Source Sans 3', system-ui, sans-serif" role="img">`,
		`<title>${escaped(title)}</title>`,
		`<style>${style}</style>`,
		`<rect width="${width}" height="${height}" fill="${inkOf('ground')}" stroke="none"/>`,
		inner,
		'</svg>\n'
	].join('\n');
}

function sourceOf(name: string): string {
	const source = SOURCES[`/src/lib/charts/${name}.svelte`];
	if (source === undefined) throw new Error(`There is no chart "${name}".`);
	return source;
}

function escaped(text: string): string {
	return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
