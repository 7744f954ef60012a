import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { PaintJob, SentLine } from '$lib/charts/paintMessages';
import type { LineValues } from '$lib/charts/paintScene';
import { INKS } from './fakeCanvas';
import { canvas, FRAME_MS, picture, screen, shownBy, Thread } from './fakeThread';

const lanes = (shift: number) => ({
	kind: 'lanes' as const,
	ground: { hatched: new Float32Array(0), gaps: new Float32Array(0), events: [] },
	box: { left: 0, top: 0, width: 10, height: 10 },
	lanes: [],
	column: 2,
	shifts: Float32Array.of(shift),
	lines: 0,
	lane: 12,
	fill: 9,
	names: { x: new Float32Array(0), words: [] },
	axis: { left: 0, right: 10, top: 12, ticks: { x: new Float32Array(0), words: [] } }
});
const job = (id: number, shift: number): PaintJob => ({
	id,
	box: { left: 0, top: 0, width: 10, height: 10 },
	ratio: 1,
	inks: INKS,
	scene: lanes(shift)
});
const soon = () => Promise.resolve();

beforeEach(() => {
	vi.useFakeTimers();
	vi.resetModules();
	vi.stubGlobal('Worker', Thread);
	vi.stubGlobal('requestAnimationFrame', (run: () => void) => setTimeout(run, FRAME_MS));
	vi.stubGlobal('OffscreenCanvas', class {});
	vi.stubGlobal('ImageBitmapRenderingContext', class {});
});
afterEach(() => {
	vi.useRealTimers();
	vi.unstubAllGlobals();
});
const begin = async () => (await import('$lib/charts/paintThread.svelte')).paintThread;

describe('paintThread', () => {
	it('says first where the face of words is, since a thread has none of the page', async () => {
		const thread = await begin();
		const a = thread.take(canvas())!;
		thread.paint(job(a, 1));
		await soon();
		expect(Thread.last.said[0]).toEqual({
			face: 'Source Sans 3 Variable',
			address: expect.stringContaining('source-sans-3-latin-wght-normal.woff2')
		});
	});

	it('asks once a frame for all canvases, and while it paints keeps the newest of each', async () => {
		const thread = await begin();
		const [a, b] = [thread.take(canvas())!, thread.take(canvas())!];
		thread.paint(job(a, 1));
		thread.paint(job(b, 2));
		await soon();
		expect(Thread.last.asked.map(shownBy)).toEqual([
			[
				[a, 1],
				[b, 2]
			]
		]);
		for (const shift of [3, 4, 5]) thread.paint(job(a, shift));
		await soon();
		expect(Thread.last.asked).toHaveLength(1);
		Thread.last.painted();
		expect(shownBy(Thread.last.asked[1])).toEqual([[a, 5]]);
		// nothing is asked for twice
		Thread.last.painted();
		expect(Thread.last.asked).toHaveLength(2);
		thread.paint(job(b, 6));
		await soon();
		expect(shownBy(Thread.last.asked[2])).toEqual([[b, 6]]);
	});

	it('says inks once, before the first job that takes them', async () => {
		const thread = await begin();
		const id = thread.take(canvas())!;
		for (const shift of [1, 2]) {
			thread.paint(job(id, shift));
			await soon();
			Thread.last.painted();
		}
		const kinds = Thread.last.said.map((message) => Object.keys(message)[0]);
		expect(kinds).toEqual(['face', 'thing', 'jobs', 'jobs']);
	});

	it('takes of a line what is shown, and all of it once when it is met again and is no longer than drawings need', async () => {
		const thread = await begin();
		const id = thread.take(canvas())!;
		const { ground, box } = lanes(0);
		const asked = async (values: LineValues, first: number) => {
			const line = {
				values,
				first,
				exact: false,
				places: new Float32Array(4),
				tone: 'ink' as const,
				dashed: false
			};
			const y = { start: 0, slope: 1 };
			const scene = {
				kind: 'strip' as const,
				ground,
				box,
				y,
				grid: [],
				lines: [line],
				filled: null,
				signs: null
			};
			thread.paint({ ...job(id, 0), scene });
			await soon();
			const [{ scene: sent }] = Thread.last.asked.at(-1)!;
			Thread.last.painted();
			if (sent.kind !== 'strip') throw new Error(sent.kind);
			return sent.lines[0];
		};
		const valuesOf = (length: number) => ({
			low: new Float32Array(length).map((_, second) => second),
			high: new Float32Array(length).map((_, second) => second + 1)
		});
		const parts = ({ values, first }: SentLine) => {
			if (typeof values === 'number') throw new Error('all of it');
			return { low: [...values.low], high: [...values.high], first, bytes: values.low.buffer.byteLength };
		};
		const part = { low: [5, 6, 7, 8], high: [6, 7, 8, 9], first: 0, bytes: 16 };
		const [ride, logger] = [valuesOf(1000), valuesOf(65_537)];
		expect(parts(await asked(ride, 5))).toEqual(part);
		const { values, first } = await asked(ride, 6);
		expect(first).toBe(6);
		const whole = Thread.last.said.filter((said) => 'thing' in said && 'low' in said.thing);
		expect(whole).toEqual([{ thing: ride, id: values }]);
		expect((await asked(ride, 7)).values).toBe(values);
		expect(Thread.last.said.filter((said) => 'thing' in said && 'low' in said.thing)).toHaveLength(1);
		for (let again = 0; again < 2; again++) expect(parts(await asked(logger, 5))).toEqual(part);
	});

	it('ends with the last drawing, and begins anew with another', async () => {
		const thread = await begin();
		const [a, b] = [thread.take(canvas())!, thread.take(canvas())!];
		thread.drop(a);
		const first = Thread.last;
		expect(first.ended).toBe(false);
		thread.drop(b);
		expect(first.ended).toBe(true);
		const shown = screen();
		const c = thread.take(canvas(shown))!;
		expect(Thread.last).not.toBe(first);
		thread.paint(job(c, 4));
		await soon();
		Thread.last.painted();
		expect(shown.what).toBe(4);
	});

	it('shows pictures in a frame of the page, and in the same one what was asked for together with them', async () => {
		const thread = await begin();
		const shown = screen();
		const id = thread.take(canvas(shown))!;
		let now = 0;
		let asked = 0;
		const seen: [picture: unknown, beside: number][] = [];
		thread.follow({ ask: () => (asked = now), show: () => seen.push([shown.what, asked]) });
		const move = async (shift: number) => {
			now = shift;
			thread.paint(job(id, shift));
			thread.settle();
			await soon();
		};
		await move(1);
		// the newest of these two waits until the first is shown
		await move(2);
		await move(3);
		expect(seen).toEqual([]);
		Thread.last.onmessage({ data: { pictures: [picture(1)] } });
		// they have come, and the page has not come to its frame
		expect([shown.what, seen]).toEqual([null, []]);
		vi.advanceTimersByTime(FRAME_MS);
		expect(seen).toEqual([[1, 1]]);
		Thread.last.painted();
		expect(seen.at(-1)).toEqual([3, 3]);
	});

	it('shows at once what needs no picture', async () => {
		const thread = await begin();
		const show = vi.fn();
		const end = thread.follow({ ask: () => {}, show });
		thread.settle();
		await soon();
		expect(show).toHaveBeenCalledTimes(1);
		end();
		thread.settle();
		await soon();
		expect(show).toHaveBeenCalledTimes(1);
	});

	it('gives a canvas size and place of its picture, and throws away that of a canvas that is gone', async () => {
		const thread = await begin();
		const [shown, gone] = [screen(), screen()];
		const [a, b] = [thread.take(canvas(shown))!, thread.take(canvas(gone))!];
		thread.paint({ ...job(a, 1), box: { left: 92, top: 8, width: 20, height: 30 }, ratio: 2 });
		thread.paint(job(b, 1));
		await soon();
		expect([shown.width, shown.style.inset]).toEqual([10, '']);
		thread.drop(b);
		const pictures = [{ ...picture(1), width: 20, height: 30 }, picture(1)];
		Thread.last.onmessage({ data: { pictures } });
		vi.advanceTimersByTime(FRAME_MS);
		expect([shown.width, shown.height, shown.what, gone.what]).toEqual([20, 30, 1, null]);
		expect(shown.style).toEqual({ inset: '4px auto auto 46px', width: '10px', height: '15px' });
		expect(pictures.map(({ close }) => close.mock.calls.length)).toEqual([0, 1]);
	});

	it('forgets a canvas that is gone', async () => {
		const thread = await begin();
		const id = thread.take(canvas())!;
		thread.take(canvas());
		thread.paint(job(id, 1));
		thread.drop(id);
		await soon();
		expect(Thread.last.asked).toEqual([]);
		expect(Thread.last.said.at(-1)).toEqual({ gone: id });
	});

	it.each([
		['says that it failed', (thread: Thread) => thread.onmessage({ data: { failed: 'no memory' } })],
		['cannot be fetched', (thread: Thread) => thread.onerror()],
		['never answers', () => vi.advanceTimersByTime(10_000)],
		[
			'answers no more',
			async (thread: Thread) => {
				thread.painted();
				const { paintThread } = await import('$lib/charts/paintThread.svelte');
				paintThread.paint(job(1, 2));
				await soon();
				vi.advanceTimersByTime(10_001);
				paintThread.paint(job(1, 3));
			}
		]
	])('is not used any more where the thread %s', async (_, fail) => {
		const thread = await begin();
		expect(thread.usable).toBe(true);
		const id = thread.take(canvas())!;
		thread.paint(job(id, 1));
		await soon();
		const asked = Thread.last.asked.length;
		await fail(Thread.last);
		expect([thread.usable, Thread.last.ended]).toEqual([false, true]);
		// what still comes is not lost in an error
		thread.paint(job(id, 2));
		thread.drop(id);
		await soon();
		expect(Thread.last.asked.length - asked).toBeLessThan(2);
		expect(thread.usable).toBe(false);
	});

	it('lives on when it has answered once', async () => {
		const thread = await begin();
		const id = thread.take(canvas())!;
		thread.paint(job(id, 1));
		await soon();
		Thread.last.painted();
		vi.advanceTimersByTime(60_000);
		expect(thread.usable).toBe(true);
	});

	it('says dots once, and others in their place', async () => {
		const thread = await begin();
		const id = thread.take(canvas())!;
		const dots = (x: number) => ({ x: Float32Array.of(x), y: Float32Array.of(x) });
		const show = async (points: ReturnType<typeof dots>) => {
			const area = { left: 0, top: 0, width: 10, height: 10 };
			const scene = { kind: 'dots' as const, points, shown: [0, 1] as const, area, size: 1, alpha: 1 };
			thread.paint({ ...job(id, 0), scene });
			await soon();
			Thread.last.painted();
		};
		const [first, second] = [dots(1), dots(2)];
		for (const points of [first, first, second]) await show(points);
		const said = Thread.last.said.filter(
			(message) => ('thing' in message && 'x' in message.thing) || 'gone' in message
		);
		const [one, other] = said.flatMap((message) => ('thing' in message ? [message.id] : []));
		expect(said).toEqual([{ thing: first, id: one }, { thing: second, id: other }, { gone: one }]);
		thread.drop(id);
		expect(Thread.last.said.slice(-2)).toEqual([{ gone: id }, { gone: other }]);
	});

	it.each(['Worker', 'OffscreenCanvas', 'ImageBitmapRenderingContext'])(
		'is not usable without %s',
		async (missing) => {
			vi.stubGlobal(missing, undefined);
			expect((await begin()).usable).toBe(false);
		}
	);
});
