import type { PaintScene } from './paintScene';
import type { PlotBox } from './pixelBox';

/**
 * The part of a drawing that its canvas has to hold, CSS pixels: the browser copies every pixel of a canvas each time that
 * it changes.
 */
export function sceneArea(scene: PaintScene, width: number, height: number): PlotBox {
	if (scene.kind === 'strip') return scene.box;
	if (scene.kind === 'dots') return scene.area;
	// words of the axis stand beside the box, too
	return { left: 0, top: 0, width, height };
}
