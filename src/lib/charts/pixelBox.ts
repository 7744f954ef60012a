import { pixelsOf, type Pixels } from './pixelPaint';

/** A canvas to be painted pixel by pixel. */
export interface PixelSurface {
	readonly context: CanvasRenderingContext2D;
	/** device pixels a CSS pixel */
	readonly ratio: number;
}

/** The part of a canvas that is painted, CSS pixels. */
export interface PlotBox {
	readonly left: number;
	readonly top: number;
	readonly width: number;
	readonly height: number;
}

/** The same in device pixels, with the pixels themselves as they were left the last time. */
export interface PixelBox {
	readonly left: number;
	readonly top: number;
	readonly pixels: Pixels;
	/** hands the pixels to the canvas */
	readonly show: () => void;
}

/** pixels of each canvas from frame to frame: new ones every frame would be megabytes to clear away */
const kept = new WeakMap<object, ImageData>();

export function pixelBox({ context, ratio }: PixelSurface, box: PlotBox): PixelBox {
	const [left, top] = [Math.round(box.left * ratio), Math.round(box.top * ratio)];
	const width = Math.max(1, Math.round(box.width * ratio));
	const height = Math.max(1, Math.round(box.height * ratio));
	let image = kept.get(context.canvas);
	if (image?.width !== width || image.height !== height)
		kept.set(context.canvas, (image = context.createImageData(width, height)));
	const shown = image;
	return {
		left,
		top,
		pixels: pixelsOf(shown.data, width, height),
		show: () => context.putImageData(shown, left, top)
	};
}
