import type { PaintScene } from './paintScene';
import type { PlotBox } from './pixelBox';

/**
 * The part of a drawing that its canvas has to hold, CSS pixels: the browser copies every pixel of a canvas each time that
 * it changes.
 */
export function sceneArea(scene: PaintScene, width: number, height: number): PlotBox {
	if (scene.kind === 'strip') return scene.signs ? withSigns(scene.box, width) : scene.box;
	if (scene.kind === 'dots') return scene.area;
	// words of the axis stand beside the box, too
	return { left: 0, top: 0, width, height };
}

/** half the width of the largest sign with its edge, CSS pixels */
const HALF_SIGN = 11;

/** signs stand above the box of a strip and beyond its ends, their numbers as far as the drawing goes */
function withSigns({ left, top, height }: PlotBox, width: number): PlotBox {
	return { left: left - HALF_SIGN, top: 0, width: width - left + HALF_SIGN, height: top + height };
}
