import type { Rgba } from './pixelPaint';

/**
 * The bytes of a colour as the tokens write it: #rgb, #rgba, #rrggbb or #rrggbbaa.
 *
 * @returns opaque black for anything else
 * @example rgbaOf('#7b2d6f26') // [123, 45, 111, 38]
 */
export function rgbaOf(colour: string): Rgba {
	let rgba = read.get(colour);
	if (!rgba) read.set(colour, (rgba = readColour(colour)));
	return rgba;
}

/** the tokens' colours are few and are asked for in every frame */
const read = new Map<string, Rgba>();

function readColour(colour: string): Rgba {
	const digits = /^#([0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8})$/i.exec(colour.trim())?.[1];
	if (!digits) return [0, 0, 0, 255];
	const pairs = digits.length <= 4 ? [...digits].map((digit) => digit + digit) : digits.match(/../g)!;
	const [red, green, blue, alpha = 255] = pairs.map((pair) => parseInt(pair, 16));
	return [red, green, blue, alpha];
}
