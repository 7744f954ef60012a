import type { Inks } from './canvasInks.svelte';
import { inCssPixels, type WordsSurface } from './paintAxis';
import type { SceneSign, SceneSigns } from './paintScene';
import type { PlotBox } from './pixelBox';
import { MARK_FOOT, SIGN_LINE } from './strip';

type PathMember =
	| 'arc'
	| 'beginPath'
	| 'closePath'
	| 'fill'
	| 'lineTo'
	| 'lineWidth'
	| 'moveTo'
	| 'setLineDash'
	| 'stroke'
	| 'strokeStyle';

/** A canvas that signs are drawn on. */
export interface SignSurface extends WordsSurface {
	readonly context: WordsSurface['context'] & Pick<CanvasRenderingContext2D, PathMember>;
}
type Pen = SignSurface['context'];

/** Draws the signs above a strip and the marks through it as SlipGlyph and TimeStrip do where they are no picture. */
export function paintSigns(surface: SignSurface, signs: SceneSigns, box: PlotBox, inks: Inks): void {
	const pen = inCssPixels(surface);
	for (const sign of signs.slips) paintSign(pen, sign, inks);
	pen.font = `600 12px ${inks.faces}`;
	pen.textAlign = 'left';
	for (const { text, x, selected } of signs.numbers) {
		pen.fillStyle = selected ? inks.accent : inks.ink;
		pen.fillText(text, x, SIGN_LINE.base);
	}
	pen.fillStyle = pen.strokeStyle = inks.ink;
	pen.lineWidth = 1.25;
	pen.setLineDash([2, 2]);
	for (const x of signs.marks) paintMark(pen, x, box);
	pen.setLineDash([]);
}

function paintSign(pen: Pen, { x, size, standing, strokes }: SceneSign, inks: Inks): void {
	const y = SIGN_LINE.middle;
	const counts = standing === 'confirmed' || standing === 'unreviewed';
	pen.beginPath();
	if (standing === 'apart') pen.arc(x, y, size * 0.6, 0, 2 * Math.PI);
	else if (counts) polygon(pen, [x, y - size, x + size, y, x, y + size, x - size, y]);
	else {
		const half = size * 0.7;
		line(pen, x - half, y - half, x + half, y + half);
		line(pen, x - half, y + half, x + half, y - half);
	}
	pen.fillStyle = standing === 'confirmed' ? inks.accent : inks.sheet;
	pen.strokeStyle = counts ? inks.accent : inks.words;
	pen.lineWidth = 1.75;
	pen.fill();
	pen.stroke();
	pen.beginPath();
	for (let i = 0; i < strokes; i++) {
		const place = x + 3 * i - 1.5 * (strokes - 1);
		line(pen, place, y + 10.5, place, y + 14.5);
	}
	pen.strokeStyle = inks.ink;
	pen.lineWidth = 1.25;
	pen.stroke();
}

/** a dashed line down the strip on a flag at its foot */
function paintMark(pen: Pen, x: number, { top, height }: PlotBox): void {
	const foot = top + height - MARK_FOOT;
	pen.beginPath();
	line(pen, x, top, x, foot);
	polygon(pen, [x - 5, foot + 4, x + 5, foot + 4, x, foot - 4]);
	pen.fill();
	pen.stroke();
}

function line(pen: Pen, fromX: number, fromY: number, toX: number, toY: number): void {
	pen.moveTo(fromX, fromY);
	pen.lineTo(toX, toY);
}

/** @param places x, y, x, y, ... of its corners */
function polygon(pen: Pen, places: readonly number[]): void {
	pen.moveTo(places[0], places[1]);
	for (let i = 2; i < places.length; i += 2) pen.lineTo(places[i], places[i + 1]);
	pen.closePath();
}
