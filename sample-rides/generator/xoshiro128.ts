/**
 * The pseudo-random generator xoshiro128** (Blackman and Vigna, Scrambled linear pseudorandom number
 * generators, ACM Transactions on Mathematical Software 47, 2021).
 *
 * @param state four 32-bit numbers, not all zero
 * @returns a function that gives the next number, 0 to 2^32 - 1
 * @example xoshiro128([1, 2, 3, 4])() // 11520
 */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
	let [a, b, c, d] = state;
	return () => {
		const five = Math.imul(b, 5);
		const result = Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
		const t = b << 9;
		c ^= a;
		d ^= b;
		b ^= c;
		a ^= d;
		c ^= t;
		d = (d << 11) | (d >>> 21);
		return result;
	};
}
