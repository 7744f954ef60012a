const round = (value: number) => Math.round(10 * value) / 10;

/** a canvas as far as dense lines need it */
export function canvas(width: number, height: number) {
	const put: { image: { data: Uint8ClampedArray; width: number }; x: number; y: number }[] = [];
	const said: { word: string; x: number; y: number; font: string; ink: string }[] = [];
	const strokes: { x: number; y: number; width: number; height: number; ink: string }[] = [];
	const drawn: { how: string; path: string; ink: string; width: number; dash: readonly number[] }[] = [];
	const cleared: number[][] = [];
	let [path, dash] = ['', [] as readonly number[]];
	const places = (letter: string) => (x: number, y: number) =>
		void (path += `${letter}${round(x)},${round(y)}`);
	const draw = (how: string, ink: string) =>
		void drawn.push({ how, path, ink, width: context.lineWidth, dash });
	const context = {
		font: '',
		fillStyle: '',
		strokeStyle: '',
		lineWidth: 1,
		beginPath: () => void (path = ''),
		moveTo: places('M'),
		lineTo: places('L'),
		closePath: () => void (path += 'Z'),
		arc: (x: number, y: number, radius: number) => void (path += `O${x},${y},${round(radius)}`),
		setLineDash: (pattern: readonly number[]) => void (dash = pattern),
		fill: () => draw('fill', context.fillStyle),
		stroke: () => draw('stroke', context.strokeStyle),
		setTransform: () => {},
		clearRect: (...box: number[]) => void cleared.push(box),
		fillRect: (x: number, y: number, width: number, height: number) =>
			strokes.push({ x, y, width, height, ink: context.fillStyle }),
		fillText: (word: string, x: number, y: number) =>
			said.push({ word, x, y, font: context.font, ink: context.fillStyle }),
		canvas: { width, height },
		getTransform: () => ({ a: 1 }),
		createImageData: (across: number, down: number) => ({
			width: across,
			height: down,
			data: new Uint8ClampedArray(4 * across * down)
		}),
		putImageData: (image: (typeof put)[0]['image'], x: number, y: number) => put.push({ image, x, y })
	};
	return { put, said, strokes, drawn, cleared, context: context as unknown as CanvasRenderingContext2D };
}

export const INKS = {
	ink: '#000000',
	soft: '#777777',
	accent: '#660066',
	wash: '#66006633',
	rule: '#cccccc',
	sheet: '#ffffff',
	sunken: '#eeeeee',
	words: '#555555',
	faces: 'sans-serif'
};

/** pixels of a canvas, which this runtime has not */
export class Image {
	constructor(
		readonly data: Uint8ClampedArray,
		readonly width: number,
		readonly height: number
	) {}
}
