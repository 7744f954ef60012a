import { inkOf } from '$lib/charts/inkOf';

/**
 * The style block of a chart component for a drawing that stands by itself: inks as plain colours, each
 * rule bound to the class that the compiler gave the component's elements, so that two components in one
 * drawing do not colour each other; rules for all below `svg` hold for the whole drawing. The rules for `svg`
 * itself are left out: they size it on a page.
 *
 * @param source of the component; @param scope its class, "svelte-1abc"
 */
export function styleOfChart(source: string, scope: string): string {
	const css = /<style>([\s\S]*?)<\/style>/.exec(source)?.[1] ?? '';
	return [...css.replace(/\/\*[\s\S]*?\*\//g, '').matchAll(/([^{}]+)\{([^{}]*)\}/g)]
		.map(([, selectors, rules]) => ({
			selectors: selectors.split(',').map((selector) => selector.trim()),
			rules: rules.replace(/var\(--([a-z-]+)\)/g, (_whole, ink: string) => inkOf(ink)).replace(/\s+/g, ' ')
		}))
		.filter(({ selectors }) => !selectors.includes('svg'))
		.map(({ selectors, rules }) => {
			const bound = selectors.map((one) => /^svg :global\((.+)\)$/.exec(one)?.[1] ?? `${one}.${scope}`);
			return `${bound.join(',')}{${rules.trim()}}`;
		})
		.join('\n');
}
