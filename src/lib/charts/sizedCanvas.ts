/**
 * A canvas sized for the screen's pixel ratio (only when that changed, since setting a size throws the bitmap
 * away).
 *
 * @returns device pixels a CSS pixel
 */
export function sizedCanvas(canvas: HTMLCanvasElement, width: number, height: number): number {
	const ratio = globalThis.devicePixelRatio || 1;
	const [across, down] = [Math.round(width * ratio), Math.round(height * ratio)];
	if (canvas.width !== across) canvas.width = across;
	if (canvas.height !== down) canvas.height = down;
	return ratio;
}
