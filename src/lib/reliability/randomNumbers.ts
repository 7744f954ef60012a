/** A seeded stream of pseudo-random numbers. */
export interface RandomNumbers {
	/** uniform in [0, 1) */
	next(): number;
	/** whole number from 0 to limit - 1, each as likely as the other */
	below(limit: number): number;
	/** normal with mean 0 and standard deviation 1 */
	normal(): number;
	/** events of a Poisson process when `mean` are expected, mean >= 0 */
	poisson(mean: number): number;
}

/**
 * Pseudo-random numbers that are the same for the same seed on every machine: resampling is recorded with
 * its seed and can be repeated. Generator xoshiro128**, its state filled by the splitmix mixer of 32 bits.
 *
 * @param seed any integer; its lowest 32 bits count
 * @returns the stream
 * @example randomNumbers(1).next() === randomNumbers(1).next() // true
 * Source: Blackman and Vigna 2021, ACM Trans. Math. Software 47(4):36; normals by Box and Muller 1958;
 * Poisson by Knuth's product, in parts of at most 30 expected events (The Art of Computer Programming 3.4.1).
 */
export function randomNumbers(seed: number): RandomNumbers {
	const draw = stream(seed);
	const next = () => draw() / 4294967296;
	const fewEvents = (mean: number) => {
		const floor = Math.exp(-mean);
		let events = -1;
		for (let product = 1; product > floor || events < 0; events++) product *= 1 - next();
		return events;
	};
	return {
		next,
		below: (limit) => Math.floor(next() * limit),
		normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
		poisson: (mean) => {
			let events = 0;
			let left = mean;
			for (; left > 30; left -= 30) events += fewEvents(30);
			return left > 0 ? events + fewEvents(left) : events;
		}
	};
}

/** the generator itself: four words of state, one word out a call */
function stream(seed: number): () => number {
	const s = new Uint32Array(4);
	let mixer = seed >>> 0;
	for (let i = 0; i < 4; i++) {
		mixer = (mixer + 0x9e3779b9) >>> 0;
		let z = mixer;
		z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
		z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
		s[i] = z ^ (z >>> 16);
	}
	const turn = (x: number, bits: number) => (x << bits) | (x >>> (32 - bits));
	return () => {
		const result = Math.imul(turn(Math.imul(s[1], 5), 7), 9) >>> 0;
		const shifted = s[1] << 9;
		s[2] ^= s[0];
		s[3] ^= s[1];
		s[1] ^= s[2];
		s[0] ^= s[3];
		s[2] ^= shifted;
		s[3] = turn(s[3], 11);
		return result;
	};
}
