import type { DotsScene } from './paintScene';

/** Draws dots as squares: for a drawing that has no pixels, or for paper. */
export function drawDots(
	context: CanvasRenderingContext2D,
	{ points: { x, y }, shown, size, alpha }: DotsScene,
	colour: string
): void {
	context.fillStyle = colour;
	context.globalAlpha = alpha;
	for (let i = shown[0]; i < shown[1]; i++)
		if (x[i] === x[i]) context.fillRect(x[i] - size / 2, y[i] - size / 2, size, size);
	context.globalAlpha = 1;
}
