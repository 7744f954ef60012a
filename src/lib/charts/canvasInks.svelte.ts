import { flushSync } from 'svelte';

/** The tokens' colours as a canvas needs them: resolved, and again when the colour scheme changes. */
export interface Inks {
	readonly ink: string;
	readonly soft: string;
	readonly accent: string;
	readonly wash: string;
	readonly rule: string;
	readonly sheet: string;
	readonly sunken: string;
}

/**
 * @param element a getter: the canvas exists only after mounting
 * @returns an object whose `current` follows the colour scheme, and paper when the page is printed
 */
export function canvasInks(element: () => Element | undefined): { readonly current: Inks } {
	let scheme = $state(0);
	$effect(() => {
		const queries = ['(prefers-color-scheme: dark)', 'print'].map((query) => matchMedia(query));
		// at once: a page that is about to be printed does not wait
		const changed = () => flushSync(() => scheme++);
		for (const query of queries) query.addEventListener('change', changed);
		return () => {
			for (const query of queries) query.removeEventListener('change', changed);
		};
	});
	const current = $derived.by(() => {
		void scheme;
		const found = element();
		const style = found ? getComputedStyle(found) : null;
		// before there is an element nothing is drawn
		const token = (name: string) => style?.getPropertyValue(name).trim() ?? '';
		return {
			ink: token('--ink'),
			soft: token('--rule-strong'),
			accent: token('--accent'),
			wash: token('--accent-wash'),
			rule: token('--rule'),
			sheet: token('--sheet'),
			sunken: token('--sunken')
		};
	});
	return {
		get current() {
			return current;
		}
	};
}
