import { oneOf, type Pick } from './seeded';

/** One to eight bytes changed. */
export function flipBytes(sound: Uint8Array, pick: Pick): Uint8Array {
	const bytes = Uint8Array.from(sound);
	for (let flips = 1 + pick(8); flips > 0; flips--) bytes[pick(bytes.length)] = pick(256);
	return bytes;
}

/** Cut off at one end or both. */
export function cutOff(sound: Uint8Array, pick: Pick): Uint8Array {
	const from = pick(3) === 0 ? pick(sound.length) : 0;
	return sound.slice(from, from + pick(sound.length - from + 1));
}

/** A piece of one in the place of a piece of another, or the same piece again. */
export function splice(sound: Uint8Array, other: Uint8Array, pick: Pick): Uint8Array {
	const at = pick(sound.length);
	const from = pick(other.length);
	const piece = other.subarray(from, from + pick(Math.min(600, other.length - from)) + 1);
	const left = sound.subarray(Math.min(sound.length, at + (pick(2) === 0 ? 0 : piece.length)));
	return Buffer.concat([sound.subarray(0, at), piece, left]);
}

/** Text with something put in, taken out or in another place. */
export function spoilText(sound: Uint8Array, inserts: readonly string[], pick: Pick): Uint8Array {
	let text = new TextDecoder().decode(sound);
	for (let times = 1 + pick(4); times > 0; times--) {
		const at = pick(text.length + 1);
		const cut = pick(3) === 0 ? pick(40) : 0;
		text = text.slice(0, at) + oneOf(pick, inserts) + text.slice(at + cut);
	}
	return new TextEncoder().encode(text);
}
