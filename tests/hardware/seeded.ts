/** Numbers 0 <= x < 1 that are the same for the same seed (Marsaglia's xorshift, 32 bits). */
export function seeded(seed: number): () => number {
	let state = seed >>> 0 || 1;
	return () => {
		state ^= state << 13;
		state >>>= 0;
		state ^= state >>> 17;
		state ^= state << 5;
		state >>>= 0;
		return state / 2 ** 32;
	};
}

/** The same things in another order. */
export function shuffled<T>(things: readonly T[], random: () => number): T[] {
	const order = [...things];
	for (let last = order.length - 1; last > 0; last--) {
		const chosen = Math.floor(random() * (last + 1));
		[order[last], order[chosen]] = [order[chosen], order[last]];
	}
	return order;
}
