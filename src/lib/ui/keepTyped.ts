import type { SubmitFunction } from '@sveltejs/kit';

/**
 * For `use:enhance`: once the answer is there the form keeps what was typed. The framework would empty it, and an
 * emptied form of facts takes every fact back when it is sent again.
 */
export const keepTyped: SubmitFunction =
	() =>
	({ update }) =>
		update({ reset: false });
