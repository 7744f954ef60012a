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

/**
 * On the strip that leads, on a light screen: columns of its picture that go from dark to light and back all the way
 * down, as a rider mark does, and how many elements the page itself draws over it.
 */
export function marksOf(page: Page): Promise<{ columns: number; drawn: number }> {
	return page.evaluate(() => {
		const front = document.querySelector('[aria-label^="Crank angle gained"]')!;
		const canvas = front.parentElement!.querySelector('canvas')!;
		const { width, height } = canvas;
		const copy = new OffscreenCanvas(width, height).getContext('2d')!;
		copy.drawImage(canvas, 0, 0);
		const { data } = copy.getImageData(0, 0, width, height);
		const dark = (x: number, y: number) =>
			data[4 * (y * width + x)] < 150 && data[4 * (y * width + x) + 3] > 0;
		let columns = 0;
		for (let x = 0; x < width; x++) {
			let changes = 0;
			for (let y = 1; y < height; y++) if (dark(x, y) !== dark(x, y - 1)) changes++;
			if (changes > height / 3) columns++;
		}
		return { columns, drawn: front.children.length };
	});
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
		// the browser tells anew of a pointer that rests where what lies under it has moved: the read-out would go there
		const swallow = (event: Event) => event.stopImmediatePropagation();
		addEventListener('pointermove', swallow, true);
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
		removeEventListener('pointermove', swallow, true);
		return frames;
	}, ink);
}

/** In the frames after a change of the colour scheme: how many canvases that are seen hold an ink. */
export interface InkedFrame {
	readonly before: number;
	readonly after: number;
}

/**
 * Has the page look at its strips when the colour scheme changes, its own listeners having run, and in the frames after
 * it.
 *
 * @param inks of lines, before and after it
 * @returns what waits for the frames
 */
export async function watchScheme(
	page: Page,
	inks: { readonly before: string; readonly after: string }
): Promise<() => Promise<InkedFrame[]>> {
	await page.evaluate((inks) => {
		const parts = (ink: string) => ink.split(',').map(Number);
		const holds = (data: Uint8ClampedArray, ink: readonly number[], room: number) => {
			let found = 0;
			for (let at = 0; at < data.length; at += 4)
				if (ink.every((part, i) => Math.abs(data[at + i] - part) <= (i < 3 ? room : 100))) found++;
			return found > 200;
		};
		const frame = () => {
			const seen = [...document.querySelectorAll<HTMLCanvasElement>('[role="slider"] canvas')].filter(
				(canvas) => getComputedStyle(canvas).visibility === 'visible'
			);
			const pixels = seen.map((canvas) => {
				const copy = new OffscreenCanvas(canvas.width, canvas.height).getContext('2d')!;
				copy.drawImage(canvas, 0, 0);
				return copy.getImageData(0, 0, canvas.width, canvas.height).data;
			});
			// lines drawn as paths are softened, pixels are not
			const count = (ink: string, room: number) =>
				pixels.filter((data) => holds(data, parts(ink), room)).length;
			return { before: count(inks.before, 0), after: count(inks.after, 60) };
		};
		const watched = new Promise<InkedFrame[]>((done) =>
			matchMedia('(prefers-color-scheme: dark)').addEventListener(
				'change',
				() => {
					const frames = [frame()];
					const next = () => {
						frames.push(frame());
						if (frames.length < 12) requestAnimationFrame(next);
						else done(frames);
					};
					requestAnimationFrame(next);
				},
				{ once: true }
			)
		);
		Object.assign(globalThis, { watched });
	}, inks);
	return () => page.evaluate(() => (globalThis as unknown as { watched: Promise<InkedFrame[]> }).watched);
}
