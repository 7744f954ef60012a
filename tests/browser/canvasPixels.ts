import type { Page } from 'playwright-core';

/** What stands on a canvas. */
export interface Shown {
	/** device pixels */
	readonly width: number;
	/** how many of its pixels have the ink that was asked for */
	readonly inked: number;
	/** the drawing as an address */
	readonly image: string;
}

/** Every canvas of the strips, whoever painted it. */
export function canvases(page: Page, ink = ''): Promise<Shown[]> {
	return page.evaluate((ink) => {
		const wanted = new Uint32Array(Uint8Array.from(ink.split(',').map(Number)).buffer)[0];
		return [...document.querySelectorAll<HTMLCanvasElement>('[role="slider"] canvas')].map((canvas) => {
			const copy = Object.assign(document.createElement('canvas'), {
				width: canvas.width,
				height: canvas.height
			});
			const context = copy.getContext('2d')!;
			context.drawImage(canvas, 0, 0);
			const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
			const pixels = new Uint32Array(data.buffer);
			let inked = 0;
			for (let at = 0; at < pixels.length; at++) if (pixels[at] === wanted) inked++;
			return { width: canvas.width, inked, image: copy.toDataURL() };
		});
	}, ink || '0,0,0,0');
}

/** Under the ribbon, where its axis stands: how many pixels its picture has there, and how many words the page. */
export function axisOf(page: Page): Promise<{ pixels: number; words: number }> {
	return page.evaluate(() => {
		const front = document.querySelector('[aria-label^="What the drive did"]')!;
		const canvas = front.parentElement!.querySelector('canvas')!;
		const copy = new OffscreenCanvas(canvas.width, canvas.height).getContext('2d')!;
		copy.drawImage(canvas, 0, 0);
		const rows = Math.round((16 * canvas.height) / front.clientHeight);
		const { data } = copy.getImageData(0, canvas.height - rows, canvas.width, rows);
		let pixels = 0;
		for (let at = 3; at < data.length; at += 4) if (data[at] > 0) pixels++;
		return { pixels, words: front.querySelectorAll('text').length };
	});
}

/** On the strip that leads: columns of its picture in which a rider mark is dashed, and what the page draws itself. */
export function marksOf(page: Page, ink: string): Promise<{ columns: number; drawn: number }> {
	return page.evaluate((ink) => {
		const wanted = new Uint32Array(Uint8Array.from(ink.split(',').map(Number)).buffer)[0];
		const front = document.querySelector('[aria-label^="Crank angle gained"]')!;
		const canvas = front.parentElement!.querySelector('canvas')!;
		const { width, height } = canvas;
		const copy = new OffscreenCanvas(width, height).getContext('2d')!;
		copy.drawImage(canvas, 0, 0);
		const pixels = new Uint32Array(copy.getImageData(0, 0, width, height).data.buffer);
		let columns = 0;
		for (let x = 0; x < width; x++) {
			let changes = 0;
			for (let y = 1; y < height; y++)
				if ((pixels[y * width + x] === wanted) !== (pixels[(y - 1) * width + x] === wanted)) changes++;
			if (changes > height / 4) columns++;
		}
		return { columns, drawn: front.children.length };
	}, ink);
}

/** canvases that hold a line */
export const withInk = (shown: readonly Shown[]) => shown.filter(({ inked }) => inked > 200).length;

/** of the pixels of two drawings the share that is told apart by more than two of 255; 1 where a size is another */
export function apart(page: Page, a: readonly Shown[], b: readonly Shown[]): Promise<number> {
	return page.evaluate(
		async ([first, second]) => {
			const read = async (address: string) => {
				const image = Object.assign(new Image(), { src: address });
				await image.decode();
				const context = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
				context.drawImage(image, 0, 0);
				return context.getImageData(0, 0, image.width, image.height).data;
			};
			let [pixels, other] = [0, 0];
			for (let canvas = 0; canvas < first.length; canvas++) {
				const [one, two] = [await read(first[canvas]), await read(second[canvas])];
				if (one.length !== two.length) return 1;
				pixels += one.length / 4;
				for (let at = 0; at < one.length; at += 4)
					if ([0, 1, 2, 3].some((part) => Math.abs(one[at + part] - two[at + part]) > 2)) other++;
			}
			return other / pixels;
		},
		[a.map(({ image }) => image), b.map(({ image }) => image)] as const
	);
}

/**
 * Moves the window to and fro, much in each frame, and says what was on the screen then: the line of the read-out, an
 * element of the page, and the step of the power, a picture. Pixels from the left edge of the strips.
 */
export function movedFrames(page: Page, ink: string): Promise<{ line: number; step: number }[]> {
	return page.evaluate(async (ink) => {
		const wanted = new Uint32Array(Uint8Array.from(ink.split(',').map(Number)).buffer)[0];
		const strips = document.querySelector<HTMLElement>('[role="slider"]')!;
		strips.focus();
		const [left, top] = [strips.getBoundingClientRect().left, strips.getBoundingClientRect().top];
		const canvas = document.querySelector('[aria-label="Power"]')!.parentElement!.querySelector('canvas')!;
		const copy = new OffscreenCanvas(canvas.width, 40).getContext('2d', { willReadFrequently: true })!;
		/** the first column with ink in the upper half, where only the harder part of the ride lies */
		const stepOf = () => {
			copy.clearRect(0, 0, canvas.width, 40);
			copy.drawImage(canvas, 0, 0);
			const pixels = new Uint32Array(copy.getImageData(0, 0, canvas.width, 40).data.buffer);
			for (let x = 0; x < canvas.width; x++)
				for (let y = 0; y < 40; y++) if (pixels[y * canvas.width + x] === wanted) return x;
			return -1;
		};
		const { port1, port2 } = new MessageChannel();
		const frames: { line: number; step: number }[] = [];
		for (let i = 0; i < 60; i++)
			await new Promise<void>((done) =>
				requestAnimationFrame(() => {
					const deltaX = (i % 20 < 10 ? 1 : -1) * 30;
					const move = { deltaX, clientX: left + 200, clientY: top + 150, bubbles: true, cancelable: true };
					strips.dispatchEvent(new WheelEvent('wheel', move));
					// this frame has been painted
					port1.onmessage = () => {
						const { left: at } = strips.querySelector('.over .line')!.getBoundingClientRect();
						frames.push({ line: at - left, step: stepOf() });
						done();
					};
					port2.postMessage(null);
				})
			);
		return frames;
	}, ink);
}
