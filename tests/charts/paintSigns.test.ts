import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { groundPaths } from '$lib/charts/groundPaths';
import { linearScale } from '$lib/charts/linearScale';
import { paintSigns } from '$lib/charts/paintSigns';
import { paintStrip } from '$lib/charts/paintStrip';
import type { SceneSigns } from '$lib/charts/paintScene';
import { timeAxis } from '$lib/charts/rideAxis';
import { sceneArea } from '$lib/charts/sceneArea';
import SlipGlyph from '$lib/charts/SlipGlyph.svelte';
import type { SlipMark } from '$lib/charts/strip';
import { stripPlaces } from '$lib/charts/stripPlaces';
import { stripScene } from '$lib/charts/stripScene';
import { stripSigns } from '$lib/charts/stripSigns';
import { createFormats } from '$lib/ui/formats';
import { canvas, Image, INKS } from './fakeCanvas';
import { svgOf } from './svgOf';

beforeAll(() => void vi.stubGlobal('ImageData', Image));
afterAll(() => void vi.unstubAllGlobals());

const box = { left: 46, top: 30, width: 340, height: 180 };
const STANDINGS = ['confirmed', 'unreviewed', 'rejected', 'apart'] as const;

describe('paintSigns', () => {
	const painted = (signs: Partial<SceneSigns>, ratio = 1) => {
		const made = canvas(400, 212);
		paintSigns({ context: made.context, ratio }, { slips: [], numbers: [], marks: [], ...signs }, box, INKS);
		return made;
	};
	const sign = (standing: (typeof STANDINGS)[number], strokes: 0 | 3 = 0) =>
		painted({ slips: [{ id: 1, x: 0, standing, size: 5, strokes }] }).drawn;

	it.each(STANDINGS)(
		'draws the shape of an event that is %s as an element of the page has it',
		(standing) => {
			const svg = svgOf(SlipGlyph, { standing, size: 5, strokes: 3 as const });
			const [shape, , tally] = sign(standing, 3);
			// the element has its middle at nought, the picture 12 px below the upper edge
			const d = (text: string) =>
				text
					.replace(/v4/g, () => '')
					.match(/-?[\d.]+,-?[\d.]+/g)!
					.map((place) => place.split(',').map(Number));
			const here = (path: string) => d(path).map(([x, y]) => [x, Math.round(10 * (y - 12)) / 10]);
			const drawnBy = [...svg.matchAll(/ d="([^"]+)"/g)].map(([, text]) => text);
			if (standing === 'apart') {
				expect(svg).toContain('<circle r="3"');
				expect(shape.path).toBe('O0,12,3');
			} else expect(here(shape.path)).toEqual(d(drawnBy[0]));
			// begins of the strokes; each is 4 px long
			const begins = here(tally.path).filter((_, place) => place % 2 === 0);
			expect(begins).toEqual(d(drawnBy.at(-1)!));
			expect(here(tally.path)[1][1] - begins[0][1]).toBe(4);
		}
	);

	it('fills only what is confirmed, and takes the accent from what counts in no rate', () => {
		const looks = STANDINGS.map((standing) => {
			const [filled, edge] = sign(standing);
			return [filled.ink, edge.ink, edge.width];
		});
		expect(looks).toEqual([
			[INKS.accent, INKS.accent, 1.75],
			[INKS.sheet, INKS.accent, 1.75],
			[INKS.sheet, INKS.words, 1.75],
			[INKS.sheet, INKS.words, 1.75]
		]);
	});

	it('writes numbers, that of the open event in the accent', () => {
		const numbers = [
			{ id: 1, text: '1: 180°', x: 60, selected: false },
			{ id: 2, text: '2', x: 90, selected: true }
		];
		expect(painted({ numbers }).said).toEqual([
			{ word: '1: 180°', x: 60, y: 14, font: '600 12px sans-serif', ink: INKS.ink },
			{ word: '2', x: 90, y: 14, font: '600 12px sans-serif', ink: INKS.accent }
		]);
	});

	it('draws a rider mark through the strip, dashed, a flag at its foot, and no dashes after it', () => {
		const { drawn, context } = painted({ marks: [100] });
		expect(drawn).toEqual([
			{
				how: 'fill',
				path: 'M100,30L100,206M95,210L105,210L100,202Z',
				ink: INKS.ink,
				width: 1.25,
				dash: [2, 2]
			},
			{
				how: 'stroke',
				path: 'M100,30L100,206M95,210L105,210L100,202Z',
				ink: INKS.ink,
				width: 1.25,
				dash: [2, 2]
			}
		]);
		context.stroke();
		expect(drawn.at(-1)!.dash).toEqual([]);
	});
});

describe('signs of a strip', () => {
	const places = stripPlaces(timeAxis(1000), [0, 500], 400);
	const formats = createFormats('en-GB', 'UTC');
	const slip = (id: number, startS: number): SlipMark => ({
		id,
		number: id,
		startS,
		endS: startS + 2,
		standing: 'unreviewed',
		overrunCrankDeg: 100
	});
	const ground = groundPaths(places, [], []);
	const slips = [slip(1, 0), slip(2, 499), slip(3, 700)];
	const signs = stripSigns({ places, ground, slips, selectedId: 2, formats }, [20, 600]);
	const scene = stripScene(
		{
			places,
			ground,
			y: linearScale([0, 1], [200, 40]),
			box,
			grid: [],
			traces: [],
			filled: null,
			signs
		},
		1
	);

	it('are those of the window', () => {
		expect(signs.slips.map(({ id }) => id)).toEqual([1, 2]);
		expect(signs.marks).toEqual([places.place(20)]);
		expect(signs.numbers.map(({ text, selected }) => [text, selected])).toEqual([
			['1: 100°', false],
			['2: 100°', true]
		]);
	});

	it('stand on the canvas as a whole, also at both ends and above the lines', () => {
		const area = sceneArea(scene, 400, 212);
		for (const { x, size } of signs.slips) {
			expect(x - size * 1.25).toBeGreaterThanOrEqual(area.left);
			expect(x + size * 1.25).toBeLessThanOrEqual(area.left + area.width);
		}
		expect([area.top, area.left + area.width, area.height]).toEqual([0, 400, 210]);
		expect(sceneArea({ ...scene, signs: null }, 400, 212)).toEqual(box);
	});

	it('leave nothing of the frame before around the lines, which are laid before them', () => {
		const { put, cleared, said, drawn, context } = canvas(400, 212);
		const before: number[] = [];
		const putImageData = (...args: Parameters<typeof context.putImageData>) => {
			before.push(cleared.length, drawn.length + said.length);
			put.push({ image: args[0], x: args[1], y: args[2] });
		};
		paintStrip({ context: Object.assign(context, { putImageData }), ratio: 1 }, scene, INKS);
		expect(before).toEqual([1, 0]);
		expect(cleared).toEqual([[0, 0, 400, 210]]);
		expect([put[0].x, put[0].y, said.length]).toEqual([46, 30, 2]);
	});
});
