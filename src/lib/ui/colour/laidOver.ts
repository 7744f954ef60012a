import type { Rgba } from './rgbaOf';

/** What is seen where a wash lies over a full ground: mixed as browsers do it, in sRGB. */
export function laidOver([red, green, blue, cover]: Rgba, ground: Rgba): Rgba {
	const mixed = (above: number, below: number) => cover * above + (1 - cover) * below;
	return [mixed(red, ground[0]), mixed(green, ground[1]), mixed(blue, ground[2]), 1];
}
