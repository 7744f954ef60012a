/** a canvas as far as dense lines need it */
export function canvas(width: number, height: number) {
	const put: { image: { data: Uint8ClampedArray; width: number }; x: number; y: number }[] = [];
	const said: { word: string; x: number; y: number; font: string; ink: string }[] = [];
	const strokes: { x: number; y: number; width: number; height: number; ink: string }[] = [];
	const context = {
		font: '',
		fillStyle: '',
		setTransform: () => {},
		clearRect: () => {},
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
	return { put, said, strokes, context: context as unknown as CanvasRenderingContext2D };
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
