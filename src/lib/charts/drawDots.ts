import { rgbaOf } from './rgbaOf';

interface Dots {
	/** side of a dot, pixels */
	readonly size: number;
	/** how much one dot covers, 0 to 1; more on one spot cover more */
	readonly alpha: number;
	readonly colour: string;
}

/**
 * Draws thousands of small squares: on a canvas they are counted into its pixels (one at a time they cost thirty
 * times as much), in a drawing that is no canvas they are squares.
 *
 * @param places [x, y] in CSS pixels
 */
export function drawDots(
	context: CanvasRenderingContext2D,
	places: Iterable<readonly [number, number]>,
	{ size, alpha, colour }: Dots
): void {
	if (typeof context.putImageData !== 'function') {
		context.fillStyle = colour;
		context.globalAlpha = alpha;
		for (const [x, y] of places) context.fillRect(x - size / 2, y - size / 2, size, size);
		context.globalAlpha = 1;
		return;
	}
	const { width, height } = context.canvas;
	if (width === 0 || height === 0) return;
	const ratio = context.getTransform().a;
	const side = Math.max(1, Math.round(size * ratio));
	const free = new Float32Array(width * height).fill(1);
	for (const [x, y] of places) {
		const [left, top] = [Math.round(x * ratio - side / 2), Math.round(y * ratio - side / 2)];
		for (let row = Math.max(0, top); row < Math.min(height, top + side); row++)
			for (let column = Math.max(0, left); column < Math.min(width, left + side); column++)
				free[row * width + column] *= 1 - alpha;
	}
	const image = context.createImageData(width, height);
	const ink = rgbaOf(colour);
	for (let i = 0; i < free.length; i++) {
		if (free[i] === 1) continue;
		for (let part = 0; part < 3; part++) image.data[4 * i + part] = ink[part];
		image.data[4 * i + 3] = ink[3] * (1 - free[i]);
	}
	context.putImageData(image, 0, 0);
}
