// The thread that paints the pictures of a page: a ride's lines, grid and ground, by pixels, and the words of its axis.
import type { Inks } from './canvasInks.svelte';
import type { FaceMessage, FromPainter, SentJob, SentLine, ToPainter } from './paintMessages';
import { paintOn } from './paintOn';
import type { DotPoints, LineValues, PaintScene } from './paintScene';
import type { PlotBox } from './pixelBox';

/** pictures wait no longer for the face, which the page has asked for as well */
const FACE_MS = 1000;

/** inks, dots and values of lines by the numbers under which the page names them */
const known = new Map<number, unknown>();
/** what is painted on, by the numbers of the page's canvases */
const surfaces = new Map<number, OffscreenCanvasRenderingContext2D>();

/** the page's face for words has come, or is no longer waited for */
let faced: Promise<unknown> = Promise.resolve();

// one after the other, in the order in which they came
addEventListener('message', ({ data }: MessageEvent<ToPainter>) => {
	if ('face' in data) faced = fetched(data);
	else void faced.then(() => hear(data));
});

/** a thread has none of the page's faces; without this one the system's have to do */
async function fetched({ face, address }: FaceMessage): Promise<void> {
	try {
		const made = new FontFace(face, `url(${address})`, { weight: '200 900' });
		(globalThis as unknown as { fonts: FontFaceSet }).fonts.add(made);
		await Promise.race([made.load(), new Promise((done) => setTimeout(done, FACE_MS))]);
	} catch {
		// words are there all the same
	}
}

function hear(data: Exclude<ToPainter, FaceMessage>): void {
	try {
		if ('jobs' in data) {
			const pictures = data.jobs.map(painted);
			answer({ pictures }, pictures);
		} else if ('gone' in data) {
			known.delete(data.gone);
			surfaces.delete(data.gone);
		} else known.set(data.id, data.thing);
	} catch (error) {
		answer({ failed: String(error) });
	}
}

const answer = (said: FromPainter, taken: ImageBitmap[] = []) => postMessage(said, { transfer: taken });

function painted({ id, box, ratio, inks, scene }: SentJob): ImageBitmap {
	const context = surfaceOf(id, box);
	paintOn({ context, ratio, left: box.left, top: box.top }, whole(scene), known.get(inks) as Inks);
	return context.canvas.transferToImageBitmap();
}

/** a picture that was handed on leaves it clear */
function surfaceOf(id: number, { width, height }: PlotBox): OffscreenCanvasRenderingContext2D {
	const before = surfaces.get(id);
	if (before?.canvas.width === width && before.canvas.height === height) return before;
	const made = new OffscreenCanvas(width, height).getContext('2d')!;
	surfaces.set(id, made);
	return made;
}

/** with what has travelled before */
function whole(scene: SentJob['scene']): PaintScene {
	if (scene.kind === 'lanes') return scene;
	if (scene.kind === 'dots') return { ...scene, points: known.get(scene.points) as DotPoints };
	const valuesOf = ({ values }: SentLine) =>
		typeof values === 'number' ? (known.get(values) as LineValues) : values;
	return { ...scene, lines: scene.lines.map((line) => ({ ...line, values: valuesOf(line) })) };
}
