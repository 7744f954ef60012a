/** The tokens' colours as a canvas needs them: resolved, and again when the colour scheme changes. */
export interface Inks {
	readonly ink: string;
	readonly soft: string;
	readonly accent: string;
	readonly wash: string;
}

/**
 * @param element a getter: the canvas exists only after mounting
 * @returns an object whose `current` follows the colour scheme
 */
export function canvasInks(element: () => Element | undefined): { readonly current: Inks } {
	let scheme = $state(0);
	$effect(() => {
		const query = matchMedia('(prefers-color-scheme: dark)');
		const changed = () => scheme++;
		query.addEventListener('change', changed);
		return () => query.removeEventListener('change', changed);
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
			wash: token('--accent-wash')
		};
	});
	return {
		get current() {
			return current;
		}
	};
}
