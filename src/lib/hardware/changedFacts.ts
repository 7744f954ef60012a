/** What a record may hold; a list or a record within it is compared entry by entry. */
export type Fact = string | number | null | readonly Fact[] | { readonly [name: string]: Fact };

/**
 * Where a record that others refer to would say something else than before. What was left empty (null, "",
 * an empty list) may be completed: that takes nothing back. Anything else is a change.
 *
 * @param before the record as it stands
 * @param after the record as it is wanted, of the same shape
 * @returns the names of the facts that would change, in order, entries of lists by their number from 1;
 *   empty when the record is only completed
 * @example changedFacts({ ring: 'A', note: '' }, { ring: 'B', note: 'new' }) // ['ring']
 * @example changedFacts({ bill: [{ serial: '' }] }, { bill: [{ serial: '7' }] }) // []
 * Source: common practice, no source.
 */
export function changedFacts(before: Fact, after: Fact): string[] {
	return differences(before, after, '');
}

function differences(before: Fact, after: Fact, path: string): string[] {
	if (isEmpty(before) || before === after) return [];
	if (Array.isArray(before) && Array.isArray(after)) {
		if (before.length !== after.length) return [path];
		return before.flatMap((entry: Fact, i) =>
			differences(entry, after[i] as Fact, join(path, String(i + 1)))
		);
	}
	if (isRecord(before) && isRecord(after))
		return Object.keys(before).flatMap((name) =>
			differences(before[name], after[name] ?? null, join(path, name))
		);
	return [path];
}

function join(path: string, name: string): string {
	return path === '' ? name : `${path} ${name}`;
}

function isEmpty(fact: Fact): boolean {
	return fact === null || fact === '' || (Array.isArray(fact) && fact.length === 0);
}

function isRecord(fact: Fact): fact is { readonly [name: string]: Fact } {
	return typeof fact === 'object' && fact !== null && !Array.isArray(fact);
}
