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
	/** of words beside a drawing */
	readonly words: string;
	/** the faces of words, as CSS names them */
	readonly faces: string;
}

/**
 * @param element a getter: the canvas exists only after mounting
 * @returns an object whose `current` follows the colour scheme, and paper when the page is printed; `printed`: it is
 *   for paper now
 */
export function canvasInks(element: () => Element | undefined): {
	readonly current: Inks;
	readonly printed: boolean;
} {
	let scheme = $state(0);
	let printed = $state(false);
	$effect(() => {
		const queries = ['print', '(prefers-color-scheme: dark)'].map((query) => matchMedia(query));
		printed = queries[0].matches;
		// at once: a page that is about to be printed does not wait
		const changed = () =>
			flushSync(() => {
				printed = queries[0].matches;
				scheme++;
			});
		for (const query of queries) query.addEventListener('change', changed);
		// words that the page itself has written in another face until then
		document.fonts?.addEventListener('loadingdone', changed);
		return () => {
			document.fonts?.removeEventListener('loadingdone', changed);
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
			sunken: token('--sunken'),
			words: token('--soft'),
			faces: token('--text')
		};
	});
	return {
		get current() {
			return current;
		},
		get printed() {
			return printed;
		}
	};
}
