/**
 * The ends of an axis, the same object while they say the same: scale, grid and figures that hang on it stay as they are
 * while the window moves.
 *
 * @param get the ends as they are now; to be called while a component is made
 */
export function steadyRange(get: () => readonly [number, number]): {
	readonly current: readonly [number, number];
} {
	const asked = $derived(get());
	const low = $derived(asked[0]);
	const high = $derived(asked[1]);
	const current = $derived([low, high] as const);
	return {
		get current() {
			return current;
		}
	};
}
