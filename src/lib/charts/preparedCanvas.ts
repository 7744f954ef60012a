/**
 * A canvas ready to draw on in CSS pixels: sized for the screen's pixel ratio (only when that changed, since
 * setting a size throws the bitmap away) and cleared.
 *
 * @returns null before mounting and where there is no 2D drawing
 */
export function preparedCanvas(
	canvas: HTMLCanvasElement | undefined,
	width: number,
	height: number
): CanvasRenderingContext2D | null {
	const context = canvas?.getContext('2d');
	if (!canvas || !context) return null;
	const ratio = globalThis.devicePixelRatio || 1;
	const [across, down] = [Math.round(width * ratio), Math.round(height * ratio)];
	if (canvas.width !== across) canvas.width = across;
	if (canvas.height !== down) canvas.height = down;
	context.setTransform(ratio, 0, 0, ratio, 0, 0);
	context.clearRect(0, 0, width, height);
	return context;
}
