/** The first 64 primes: the standard takes its constants from their roots. */
const PRIMES = Array.from({ length: 312 }, (_, i) => i).filter(
	(n) =>
		n > 1 && Array.from({ length: Math.floor(Math.sqrt(n)) - 1 }, (_, k) => k + 2).every((d) => n % d !== 0)
);
const fraction = (root: number) => ((root - Math.floor(root)) * 2 ** 32) | 0;
const ROUNDS = Int32Array.from(PRIMES, (prime) => fraction(Math.cbrt(prime)));
const START = Int32Array.from(PRIMES.slice(0, 8), (prime) => fraction(Math.sqrt(prime)));

const turned = (word: number, by: number) => (word >>> by) | (word << (32 - by));

/**
 * SHA-256 where the browser computes none: it does so on this machine and behind https alone, and in a workshop's plain
 * network a phone must still be able to go on with an upload. It only tells what need not be sent again; the server
 * computes its own.
 *
 * @returns 64 hexadecimal digits
 * Source: FIPS 180-4, section 6.2; checked against another implementation on drawn bytes.
 */
export function sha256(bytes: Uint8Array): string {
	const state = Int32Array.from(START);
	const words = new Int32Array(64);
	const whole = bytes.length - (bytes.length % 64);
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	for (let at = 0; at < whole; at += 64) mix(state, words, view, at);
	const rest = new Uint8Array(bytes.length - whole < 56 ? 64 : 128);
	rest.set(bytes.subarray(whole));
	rest[bytes.length - whole] = 0x80;
	const end = new DataView(rest.buffer);
	end.setUint32(rest.length - 8, Math.floor(bytes.length / 2 ** 29));
	end.setUint32(rest.length - 4, (bytes.length * 8) >>> 0);
	for (let at = 0; at < rest.length; at += 64) mix(state, words, end, at);
	return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
}

function mix(state: Int32Array, words: Int32Array, view: DataView, at: number): void {
	for (let i = 0; i < 16; i++) words[i] = view.getInt32(at + 4 * i);
	for (let i = 16; i < 64; i++) {
		const [early, late] = [words[i - 15], words[i - 2]];
		const low = turned(early, 7) ^ turned(early, 18) ^ (early >>> 3);
		const high = turned(late, 17) ^ turned(late, 19) ^ (late >>> 10);
		words[i] = (words[i - 16] + low + words[i - 7] + high) | 0;
	}
	let a = state[0];
	let b = state[1];
	let c = state[2];
	let d = state[3];
	let e = state[4];
	let f = state[5];
	let g = state[6];
	let h = state[7];
	for (let i = 0; i < 64; i++) {
		const chosen = (e & f) ^ (~e & g);
		const first = (h + (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + chosen + ROUNDS[i] + words[i]) | 0;
		const most = (a & b) ^ (a & c) ^ (b & c);
		const second = ((turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + most) | 0;
		h = g;
		g = f;
		f = e;
		e = (d + first) | 0;
		d = c;
		c = b;
		b = a;
		a = (first + second) | 0;
	}
	state[0] += a;
	state[1] += b;
	state[2] += c;
	state[3] += d;
	state[4] += e;
	state[5] += f;
	state[6] += g;
	state[7] += h;
}
