const NAMES = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** Order of things by their names as people count: "Wheel 2" before "Wheel 10"; equal names by their number. */
export function byName(
	one: { readonly id: number; readonly name: string },
	other: { readonly id: number; readonly name: string }
): number {
	return NAMES.compare(one.name, other.name) || one.id - other.id;
}
