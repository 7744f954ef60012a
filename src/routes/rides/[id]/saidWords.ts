import type { Formats } from '$lib/ui/formats';

/** Whose word an answer is. */
export function saidWords(
	said: { readonly by: string; readonly at: string } | undefined,
	formats: Pick<Formats, 'date'>
): string {
	return said ? `said by ${said.by}, ${formats.date(said.at)}` : '';
}
