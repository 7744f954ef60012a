/** What a correction changed, name by name, as the trail keeps it. */
export type FactChanges = Readonly<Record<string, { readonly before: unknown; readonly after: unknown }>>;

/**
 * @param before the row as it stood; what `after` does not name is not looked at
 * @returns null when nothing changed
 * @example factChanges({ name: 'A', hub: 'x' }, { name: 'B', hub: 'x' }) // { name: { before: 'A', after: 'B' } }
 */
export function factChanges(before: object, after: object): FactChanges | null {
	const changed: Record<string, { before: unknown; after: unknown }> = {};
	for (const [name, value] of Object.entries(after)) {
		const was = (before as Record<string, unknown>)[name] ?? null;
		if (was !== value) changed[name] = { before: was, after: value };
	}
	return Object.keys(changed).length > 0 ? changed : null;
}
