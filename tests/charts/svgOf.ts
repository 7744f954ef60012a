import { render } from 'svelte/server';
import type { Component } from 'svelte';

/**
 * A chart as the SVG that the server sends, without the markers and class hashes that change with the
 * compiler, one element a line: a stored picture that can be read in review.
 */
export function svgOf<Props extends Record<string, unknown>>(chart: Component<Props>, props: Props): string {
	const { body } = render(chart as Component<Record<string, unknown>>, { props });
	return body
		.replace(/<!--.*?-->/g, '')
		.replace(/ ?svelte-[a-z0-9]+/g, '')
		.replace(/class="\s+/g, 'class="')
		.replace(/ class=""/g, '')
		.replace(/>\s+</g, '><')
		.replace(/></g, '>\n<')
		.trim();
}
