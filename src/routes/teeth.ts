import { text } from './forms';

/** Tooth counts typed one after the other, "11, 13, 15"; null when the field is empty, NaN for what is no number. */
export function teeth(form: FormData, name: string): number[] | null {
	const typed = text(form, name);
	return typed === ''
		? null
		: typed
				.split(/[\s,;/-]+/)
				.filter(Boolean)
				.map(Number);
}
