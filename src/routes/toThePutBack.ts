import type { SubmitFunction } from '@sveltejs/kit';

/**
 * For a form that withdraws something: its row goes, so whoever works by keys or listens is led to the button that
 * puts it back, which also reads out what was withdrawn.
 *
 * @param table the word by which `Withdrawn.svelte` marks its buttons
 */
export function toThePutBack(table: string): SubmitFunction {
	return () =>
		async ({ result, update }) => {
			await update();
			// the newest comes first
			if (result.type === 'success')
				document.querySelector<HTMLElement>(`[data-put-back="${table}"]`)?.focus();
		};
}
