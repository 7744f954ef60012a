import { xoshiro128 } from './xoshiro128';

/** A stream of pseudo-random numbers with the few shapes that the generator needs. */
export interface Random {
	/** uniform in [0, 1) */
	next(): number;
	/** uniform in [low, high) */
	between(low: number, high: number): number;
	/** true with this chance, 0 to 1 */
	chance(probability: number): boolean;
	/** normal with this mean and standard deviation */
	normal(mean: number, sd: number): number;
	/** log-normal: exp(normal(ln(median), sigma)) */
	logNormal(median: number, sigma: number): number;
	/** exponential with this mean */
	exponential(mean: number): number;
	/** one of the values, each as likely as the other */
	pick<T>(values: readonly T[]): T;
	/** a stream of its own for one part of the work, so that a change there does not move the others */
	branch(name: string): Random;
}

/**
 * A seeded stream of pseudo-random numbers: the same seed gives the same numbers everywhere.
 * The state of xoshiro128 is filled by a 32-bit mixer of the splitmix kind; normals by the method of Box
 * and Muller (Annals of Mathematical Statistics 29, 1958).
 *
 * @param seed any integer; only its lowest 32 bits count
 * @returns the stream
 * @example random(1).next() === random(1).next() // true
 */
export function random(seed: number): Random {
	let mixer = seed >>> 0;
	const mix = () => {
		mixer = (mixer + 0x9e3779b9) >>> 0;
		let z = mixer;
		z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
		z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
		return (z ^ (z >>> 16)) >>> 0;
	};
	const draw = xoshiro128([mix(), mix(), mix(), mix() | 1]);
	const next = () => draw() / 4294967296;
	const normal = (mean: number, sd: number) =>
		mean + sd * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());

	return {
		next,
		between: (low, high) => low + (high - low) * next(),
		chance: (probability) => next() < probability,
		normal,
		logNormal: (median, sigma) => median * Math.exp(normal(0, sigma)),
		exponential: (mean) => -mean * Math.log(1 - next()),
		pick: (values) => values[Math.floor(next() * values.length)],
		branch: (name) => random(seed ^ hash(name))
	};
}

/** 32-bit FNV-1a of a name (Fowler, Noll, Vo; IETF draft-eastlake-fnv). */
function hash(name: string): number {
	let h = 0x811c9dc5;
	for (let i = 0; i < name.length; i++) h = Math.imul(h ^ name.charCodeAt(i), 0x01000193);
	return h >>> 0;
}
