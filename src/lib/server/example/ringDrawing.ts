import { grayPng } from './grayPng';

const SIDE = 480;
const OUTER = 220;
const VALLEY = 178;
const TOOTH = 12;
const EDGE = 1.6;
const PAPER = 255;
const METAL = 214;
const INK = 30;

/**
 * Draws a ratchet ring from the axle's side, as a picture: a ring whose inner face is a saw of teeth.
 *
 * @param teeth 3 to 200
 * @returns the bytes of a PNG of 480 x 480 pixels
 */
export function ringDrawing(teeth: number): Uint8Array {
	const pixels = new Uint8Array(SIDE * SIDE);
	for (let y = 0; y < SIDE; y++)
		for (let x = 0; x < SIDE; x++)
			pixels[y * SIDE + x] = shade(x - SIDE / 2 + 0.5, y - SIDE / 2 + 0.5, teeth);
	return grayPng(SIDE, SIDE, pixels);
}

function shade(x: number, y: number, teeth: number): number {
	const radius = Math.hypot(x, y);
	const turn = (Math.atan2(y, x) / (2 * Math.PI) + 1) % 1;
	// one flank is steep, which takes the load, one is shallow, over which the pawl glides
	const along = (turn * teeth) % 1;
	const inner = VALLEY - TOOTH * along;
	const steep = Math.min(along, 1 - along) * ((2 * Math.PI * radius) / teeth);
	const onFlank = steep < EDGE && radius < VALLEY && radius > VALLEY - TOOTH;
	const onFace = Math.abs(radius - inner) < EDGE || Math.abs(radius - OUTER) < EDGE;
	if (onFlank || onFace) return INK;
	return radius > inner && radius < OUTER ? METAL : PAPER;
}
