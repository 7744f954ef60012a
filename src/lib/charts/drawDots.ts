import { packedPixel } from './pixelPaint';
import { rgbaOf } from './rgbaOf';

/** Middles of dots, CSS pixels; x = NaN: none. */
export interface DotPoints {
	readonly x: Float32Array;
	readonly y: Float32Array;
}

interface Dots {
	/** those drawn: [first, behind the last] */
	readonly shown: readonly [number, number];
	/** side of a dot, pixels */
	readonly size: number;
	/** how much one dot covers, 0 to 1; more on one spot cover more */
	readonly alpha: number;
	readonly colour: string;
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
 * Draws thousands of small squares: on a canvas they are counted into its pixels (one at a time they cost thirty
 * times as much), in a drawing that is no canvas they are squares. The canvas is clear.
 */
export function drawDots(
	context: CanvasRenderingContext2D,
	{ x, y }: DotPoints,
	{ shown: [first, behind], size, alpha, colour }: Dots
): void {
	if (typeof context.putImageData !== 'function') {
		context.fillStyle = colour;
		context.globalAlpha = alpha;
		for (let i = first; i < behind; i++)
			if (x[i] === x[i]) context.fillRect(x[i] - size / 2, y[i] - size / 2, size, size);
		context.globalAlpha = 1;
		return;
	}
	const { width, height } = context.canvas;
	if (width === 0 || height === 0) return;
	const ratio = context.getTransform().a;
	const side = Math.max(1, Math.round(size * ratio));
	const { image, whole, free, touched } = clearedPixels(context, width, height);
	const less = 1 - alpha;
	for (let i = first; i < behind; i++) {
		if (x[i] !== x[i]) continue;
		const left = Math.round(x[i] * ratio - side / 2);
		const top = Math.round(y[i] * ratio - side / 2);
		const right = Math.min(width, left + side);
		const base = Math.min(height, top + side);
		for (let row = Math.max(0, top); row < base; row++)
			for (let column = Math.max(0, left); column < right; column++) {
				const pixel = row * width + column;
				if (free[pixel] === 1) touched.push(pixel);
				free[pixel] *= less;
			}
	}
	const [red, green, blue, opacity] = rgbaOf(colour);
	for (const pixel of touched)
		whole[pixel] = packedPixel([red, green, blue, Math.round(opacity * (1 - free[pixel]))]);
	context.putImageData(image, 0, 0);
}

/** no larger than what the dots of the frame before have touched is cleared */
function clearedPixels(context: CanvasRenderingContext2D, width: number, height: number): Kept {
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
