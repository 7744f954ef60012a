import { linearLight } from './linearLight';
import type { Rgba } from './rgbaOf';

/** White of sRGB (D65), its X, Y and Z. */
const WHITE = [0.95047, 1, 1.08883];

/**
 * CIELAB of an sRGB colour. Source: IEC 61966-2-1 (sRGB to XYZ), ISO/CIE 11664-4 (XYZ to CIELAB).
 *
 * @returns lightness 0 to 100 and the two axes of colour; chroma is the length of the last two
 */
export function labOf([red, green, blue]: Rgba): readonly [lightness: number, a: number, b: number] {
	const [r, g, bl] = [red, green, blue].map(linearLight);
	const [x, y, z] = [
		0.4124 * r + 0.3576 * g + 0.1805 * bl,
		0.2126 * r + 0.7152 * g + 0.0722 * bl,
		0.0193 * r + 0.1192 * g + 0.9505 * bl
	].map((value, place) => cubeRoot(value / WHITE[place]));
	return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

function cubeRoot(share: number): number {
	return share > (6 / 29) ** 3 ? Math.cbrt(share) : share / (3 * (6 / 29) ** 2) + 4 / 29;
}
