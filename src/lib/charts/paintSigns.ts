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
	const half = size * 0.7;
	pen.beginPath();
	if (counts) trace(pen, [x, y - size, x + size, y, x, y + size, x - size, y], true);
	else if (standing === 'apart') pen.arc(x, y, size * 0.6, 0, 2 * Math.PI);
	else {
		trace(pen, [x - half, y - half, x + half, y + half]);
		trace(pen, [x - half, y + half, x + half, y - half]);
	}
	pen.fillStyle = standing === 'confirmed' ? inks.accent : inks.sheet;
	pen.strokeStyle = counts ? inks.accent : inks.words;
	pen.lineWidth = 1.75;
	pen.fill();
	pen.stroke();
	pen.beginPath();
	for (let i = 0; i < strokes; i++) {
		const place = x + 3 * i - 1.5 * (strokes - 1);
		trace(pen, [place, y + 10.5, place, y + 14.5]);
	}
	pen.strokeStyle = inks.ink;
	pen.lineWidth = 1.25;
	pen.stroke();
}

/** a dashed line down the strip on a flag at its foot */
function paintMark(pen: Pen, x: number, { top, height }: PlotBox): void {
	const foot = top + height - MARK_FOOT;
	pen.beginPath();
	trace(pen, [x, top, x, foot]);
	trace(pen, [x - 5, foot + MARK_FOOT, x + 5, foot + MARK_FOOT, x, foot - MARK_FOOT], true);
	pen.fill();
	pen.stroke();
}

/** @param places x, y, x, y, ... from corner to corner */
function trace(pen: Pen, places: readonly number[], closed = false): void {
	for (let i = 0; i < places.length; i += 2) pen[i ? 'lineTo' : 'moveTo'](places[i], places[i + 1]);
	if (closed) pen.closePath();
}
