/**
 * A map by ride in which these rides were read again: those that were not found any more are gone from it. Untouched
 * entries stay the same objects.
 *
 * @param before as it was; stays as it is
 * @param touched rides that were read again
 * @param again what was found of them
 */
export function withRidesAnew<Value>(
	before: ReadonlyMap<number, Value>,
	touched: readonly number[],
	again: ReadonlyMap<number, Value>
): Map<number, Value> {
	const after = new Map(before);
	for (const id of touched) after.delete(id);
	for (const [id, value] of again) after.set(id, value);
	return after;
}
