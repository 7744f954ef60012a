import type { Inks } from './canvasInks.svelte';
import { paintDots, type WholeSurface } from './paintDots';
import { paintLanes } from './paintLanes';
import type { PaintScene } from './paintScene';
import type { SignSurface } from './paintSigns';
import { paintStrip } from './paintStrip';
import type { PixelSurface } from './pixelBox';

/** Paints a scene into the pixels of its canvas. */
export function paintOn(
	surface: PixelSurface & WholeSurface & SignSurface,
	scene: PaintScene,
	inks: Inks
): void {
	if (scene.kind === 'strip') paintStrip(surface, scene, inks);
	else if (scene.kind === 'lanes') paintLanes(surface, scene, inks);
	else paintDots(surface, scene, inks);
}
