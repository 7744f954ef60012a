import { untrack } from 'svelte';
import { paintThread } from './paintThread.svelte';

/**
 * A value that changes on the screen together with the pictures that were asked for with it: signs and axis of a
 * window are never seen beside the lines of another. Where the page paints itself it is the value at once.
 *
 * @param get what is asked for now; to be called while a component is made
 */
export function withPictures<T>(get: () => T): { readonly current: T } {
	let shown = $state.raw<{ readonly value: T } | null>(null);
	let next: { readonly value: T } | null = null;
	const ask = () => {
		const value = untrack(get);
		// what stays as it is changes nothing
		if (!next || next.value !== value) next = { value };
	};
	$effect(() => paintThread.follow({ ask, show: () => (shown = next) }));
	$effect(() => {
		get();
		paintThread.settle();
	});
	return {
		get current() {
			return paintThread.usable && shown ? shown.value : get();
		}
	};
}
