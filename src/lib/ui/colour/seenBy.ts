import { linearLight } from './linearLight';
import type { Rgba } from './rgbaOf';

/** Which cones an eye does without: those for long, middle or short waves. */
export type Sight = 'protanopia' | 'deuteranopia' | 'tritanopia';
export const SIGHTS: readonly Sight[] = ['protanopia', 'deuteranopia', 'tritanopia'];

/**
 * Matrices at full severity on linear light. Source: Machado, Oliveira and Fernandes 2009, "A Physiologically-based
 * Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6), and the authors' table of matrices.
 */
const MATRICES: Readonly<Record<Sight, readonly (readonly [number, number, number])[]>> = {
	protanopia: [
		[0.152286, 1.052583, -0.204868],
		[0.114503, 0.786281, 0.099216],
		[-0.003882, -0.048116, 1.051998]
	],
	deuteranopia: [
		[0.367322, 0.860646, -0.227968],
		[0.280085, 0.672501, 0.047413],
		[-0.01182, 0.04294, 0.968881]
	],
	tritanopia: [
		[1.255528, -0.076749, -0.178779],
		[-0.078411, 0.930809, 0.147602],
		[0.004733, 0.691367, 0.3039]
	]
};

/** The colour, in sRGB, that looks to every eye about as the given one looks to an eye of that sight. */
export function seenBy(sight: Sight, [red, green, blue, cover]: Rgba): Rgba {
	const light = [red, green, blue].map(linearLight);
	const [r, g, b] = MATRICES[sight].map((row) =>
		encoded(row.reduce((sum, weight, place) => sum + weight * light[place], 0))
	);
	return [r, g, b, cover];
}

/** Inverse of linearLight; what no screen can show is cut off. */
function encoded(light: number): number {
	const held = Math.min(1, Math.max(0, light));
	return held <= 0.0031308 ? 12.92 * held : 1.055 * held ** (1 / 2.4) - 0.055;
}
