/** Red, green, blue and how much of it covers what lies below, each 0 to 1. */
export type Rgba = readonly [red: number, green: number, blue: number, cover: number];

/**
 * @param hex "#abc", "#aabbcc" or "#aabbccdd", as tokens are written
 * @throws Error for anything else
 * @example rgbaOf('#fff') // [1, 1, 1, 1]
 */
export function rgbaOf(hex: string): Rgba {
	const digits = /^#([0-9a-f]{3,8})$/i.exec(hex)?.[1] ?? '';
	if (![3, 6, 8].includes(digits.length)) throw new Error(`"${hex}" is no colour of the tokens.`);
	const pairs = digits.length === 3 ? [...digits].map((digit) => digit + digit) : digits.match(/../g)!;
	const [red, green, blue, cover = 1] = pairs.map((pair) => parseInt(pair, 16) / 255);
	return [red, green, blue, cover];
}
