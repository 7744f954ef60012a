import { deviceBox } from './deviceBox';
import { pixelsOf, type Pixels } from './pixelPaint';

/** Where a canvas lies in its drawing. */
export interface PlacedSurface {
	/** device pixels a CSS pixel */
	readonly ratio: number;
	/** where it begins in the drawing, device pixels; the corner of it where left out */
	readonly left?: number;
	readonly top?: number;
}

/** A canvas to be painted pixel by pixel. */
export interface PixelSurface extends PlacedSurface {
	readonly context: Pick<CanvasRenderingContext2D, 'putImageData'>;
}

/** The part of a canvas that is painted, CSS pixels. */
export interface PlotBox {
	readonly left: number;
	readonly top: number;
	readonly width: number;
	readonly height: number;
}

/** The same in device pixels, with pixels that hold whatever was painted last: each is laid anew. */
export interface PixelBox {
	readonly left: number;
	readonly top: number;
	readonly pixels: Pixels;
	/** hands the pixels to the canvas */
	readonly show: () => void;
}

/**
 * One piece of memory for all canvases, painted one after the other: it stays in the processor's cache, where
 * pixels of its own for each canvas have to be fetched from memory every frame.
 */
let memory = new ArrayBuffer(0);
/** views of it by their size: strips have few sizes, but a window may be drawn wider and wider */
const kept = new Map<string, { image: ImageData; pixels: Pixels }>();
const MOST_KEPT = 16;

export function pixelBox(surface: PixelSurface, box: PlotBox): PixelBox {
	const { left, top, width, height } = deviceBox(box, surface.ratio);
	const { image, pixels } = imageOf(width, height);
	const show = () =>
		surface.context.putImageData(image, left - (surface.left ?? 0), top - (surface.top ?? 0));
	return { left, top, pixels, show };
}

function imageOf(width: number, height: number) {
	const size = `${width} ${height}`;
	const before = kept.get(size);
	if (before) return before;
	const length = 4 * width * height;
	const small = length > memory.byteLength;
	if (small) memory = new ArrayBuffer(length);
	if (small || kept.size >= MOST_KEPT) kept.clear();
	const bytes = new Uint8ClampedArray(memory, 0, length);
	const made = { image: new ImageData(bytes, width, height), pixels: pixelsOf(bytes, width, height) };
	kept.set(size, made);
	return made;
}
