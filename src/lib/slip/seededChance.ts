/** A stream of pseudo-random numbers: the same seed gives the same numbers everywhere. */
export interface Chance {
	/** uniform in [0, 1) */
	next(): number;
	/** uniform in [low, high) */
	between(low: number, high: number): number;
	/** true with this chance, 0 to 1 */
	chance(probability: number): boolean;
	/** log-normal: the logarithm is normal around ln(median) with standard deviation sigma */
	logNormal(median: number, sigma: number): number;
}

/**
 * A seeded stream: xoshiro128** (Blackman and Vigna, ACM Transactions on Mathematical Software 47, 2021), its
 * state filled by a 32-bit mixer of the splitmix kind; normals by Box and Muller (Annals of Mathematical
 * Statistics 29, 1958).
 *
 * @param seed any integer; only its lowest 32 bits count
 * @example seededChance(1).next() === seededChance(1).next() // true
 */
export function seededChance(seed: number): Chance {
	let mixer = seed >>> 0;
	const mix = () => {
		mixer = (mixer + 0x9e3779b9) >>> 0;
		let z = Math.imul(mixer ^ (mixer >>> 16), 0x85ebca6b);
		z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
		return (z ^ (z >>> 16)) >>> 0;
	};
	const [a, b, c, d] = [mix(), mix(), mix(), mix() | 1];
	const state = { a, b, c, d };
	const next = () => draw(state) / 4294967296;
	return {
		next,
		between: (low, high) => low + (high - low) * next(),
		chance: (probability) => next() < probability,
		logNormal: (median, sigma) =>
			median * Math.exp(sigma * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()))
	};
}

/** One step of the generator, 0 to 2^32 - 1. */
function draw(state: { a: number; b: number; c: number; d: number }): number {
	const five = Math.imul(state.b, 5);
	const result = Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
	const shifted = state.b << 9;
	state.c ^= state.a;
	state.d ^= state.b;
	state.b ^= state.c;
	state.a ^= state.d;
	state.c ^= shifted;
	state.d = (state.d << 11) | (state.d >>> 21);
	return result;
}
