import type { Inks } from './canvasInks.svelte';
import type { DotsScene } from './paintScene';
import type { PlacedSurface } from './pixelBox';
import { packedPixel } from './pixelPaint';
import { rgbaOf } from './rgbaOf';

/** A canvas that is painted as a whole. */
export interface WholeSurface extends PlacedSurface {
	readonly context: Pick<CanvasRenderingContext2D, 'createImageData' | 'putImageData'> & {
		readonly canvas: { readonly width: number; readonly height: number };
	};
}

/** The pixels of a canvas from frame to frame, and which of them dots have touched. */
interface Kept {
	readonly image: ImageData;
	readonly whole: Uint32Array;
	/** share of each pixel that no dot covers */
	readonly free: Float32Array;
	readonly touched: number[];
}
const kept = new WeakMap<object, Kept>();

/**
 * Paints thousands of small squares: they are counted into the canvas's pixels (one at a time they cost thirty times
 * as much).
 */
export function paintDots(surface: WholeSurface, scene: DotsScene, inks: Inks): void {
	const { context, ratio, left: fromLeft = 0, top: fromTop = 0 } = surface;
	const { width, height } = context.canvas;
	if (width === 0 || height === 0) return;
	const { points, shown, size, alpha } = scene;
	const side = Math.max(1, Math.round(size * ratio));
	const { image, whole, free, touched } = clearedPixels(context, width, height);
	for (let i = shown[0]; i < shown[1]; i++) {
		if (points.x[i] !== points.x[i]) continue;
		const [left, top] = [
			Math.round(points.x[i] * ratio - side / 2) - fromLeft,
			Math.round(points.y[i] * ratio - side / 2) - fromTop
		];
		const [right, base] = [Math.min(width, left + side), Math.min(height, top + side)];
		for (let row = Math.max(0, top); row < base; row++)
			for (let column = Math.max(0, left); column < right; column++) {
				const pixel = row * width + column;
				if (free[pixel] === 1) touched.push(pixel);
				free[pixel] *= 1 - alpha;
			}
	}
	const [red, green, blue, opacity] = rgbaOf(inks.ink);
	for (const pixel of touched)
		whole[pixel] = packedPixel([red, green, blue, Math.round(opacity * (1 - free[pixel]))]);
	context.putImageData(image, 0, 0);
}

/** no larger than what the dots of the frame before have touched is cleared */
function clearedPixels(context: WholeSurface['context'], width: number, height: number): Kept {
	const before = kept.get(context.canvas);
	if (before?.image.width === width && before.image.height === height) {
		for (const pixel of before.touched) {
			before.free[pixel] = 1;
			before.whole[pixel] = 0;
		}
		before.touched.length = 0;
		return before;
	}
	const image = context.createImageData(width, height);
	const whole = new Uint32Array(image.data.buffer, image.data.byteOffset, width * height);
	const made = { image, whole, free: new Float32Array(width * height).fill(1), touched: [] };
	kept.set(context.canvas, made);
	return made;
}
