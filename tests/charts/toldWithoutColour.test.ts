import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import CumulativeCurve from '$lib/charts/CumulativeCurve.svelte';
import RatesByBin from '$lib/charts/RatesByBin.svelte';
import { drawTrace } from '$lib/charts/drawTrace';
import { minMaxLevels } from '$lib/charts/minMaxLevels';
import SlipGlyph from '$lib/charts/SlipGlyph.svelte';
import SlipsOverDistance from '$lib/charts/SlipsOverDistance.svelte';
import type { StripTrace } from '$lib/charts/strip';
import { createFormats } from '$lib/ui/formats';
import { filesBelow, rulesOf } from '../lint/stylesOf';
import { svgOf } from './svgOf';

const CHARTS = fileURLToPath(new URL('../../src/lib/charts', import.meta.url));
const INKS = ['ink', 'soft', 'rule', 'rule-strong', 'accent', 'accent-wash', 'ground', 'sheet', 'sunken'];
const formats = createFormats('en-GB', 'UTC');
const NAMES = ['first', 'second', 'third', 'fourth', 'fifth'];
const attributes = (svg: string, element: RegExp, name: string) =>
	[...svg.matchAll(element)].map(([tag]) => new RegExp(`${name}="([^"]*)"`).exec(tag)?.[1] ?? '');

// svgOf gives a chart without any colour: what tells series apart there does not need one
describe('series told apart without colour', () => {
	it('slips over distance: a dash for each build and a number for each line', () => {
		const lines = NAMES.map((name, dash) => ({
			key: name,
			build: name,
			wheel: 'Wheel A',
			dash,
			endM: 50_000 * (dash + 1),
			observed: [],
			observedM: 0,
			slips: []
		}));
		const svg = svgOf(SlipsOverDistance, { lines, formats });
		const dashes = attributes(svg, /<path class="line"[^>]*>/g, 'stroke-dasharray');
		expect(new Set(dashes).size).toBe(NAMES.length);
		NAMES.forEach((name, place) => {
			// once at the end of its line, once before its name
			expect(svg.match(new RegExp(`class="number[^>]*>${place + 1}<`, 'g'))).toHaveLength(2);
			expect(svg).toContain(`${name} · Wheel A`);
		});
	});

	it('slips a wheel by age: a dash and a number for each build', () => {
		const curves = NAMES.map((name, place) => ({
			name,
			endM: 10_000 * (place + 1),
			points: [{ atM: 5_000, value: 1, lower: 0.5, upper: 2 }]
		}));
		const svg = svgOf(CumulativeCurve, { label: 'a', axis: 'km', curves, formats });
		expect(new Set(attributes(svg, /<path class="line"[^>]*>/g, 'stroke-dasharray')).size).toBe(NAMES.length);
		for (const number of ['1', '2', '3', '4', '5']) expect(svg).toContain(`>${number}</text>`);
	});

	it('rates by bin: a filling for each of three series, a number for each', () => {
		const rate = {
			count: 3,
			observedM: 90_000,
			ratePerHundredKm: 3,
			lowerPerHundredKm: 1,
			upperPerHundredKm: 9
		};
		const series = NAMES.slice(0, 3).map((name) => ({ name, rates: [rate] }));
		const svg = svgOf(RatesByBin, { id: 'b', label: 'a', bins: ['0 to 20'], axis: 'Nm', series, formats });
		expect(new Set(attributes(svg, /<rect [^>]*>/g, 'fill')).size).toBe(3);
		expect(svg.match(/class="number end"/g)).toHaveLength(3);
	});

	it('events: a shape for each standing, and a full or an open one of the same', () => {
		const shapes = (['confirmed', 'unreviewed', 'rejected', 'apart'] as const).map((standing) =>
			svgOf(SlipGlyph, { standing })
				.replace(/class="[^"]*"/g, '')
				.replace(/\s+/g, ' ')
		);
		// confirmed and not reviewed share the lozenge: one is full, one is open
		expect(shapes[0]).toBe(shapes[1]);
		expect(new Set(shapes).size).toBe(3);
		const fills = rulesOf(CHARTS, 'SlipGlyph.svelte').filter(({ property }) => property === 'fill');
		expect(fills.map(({ selector, value }) => [selector, value])).toEqual([
			['path, circle', 'var(--sheet)'],
			['.confirmed path', 'var(--accent)'],
			['.rejected path', 'none']
		]);
	});
});

describe('paint of charts', () => {
	const files = filesBelow(CHARTS, ['.svelte']);

	it('comes from the inks for data alone', () => {
		const found = files
			.flatMap((file) => rulesOf(CHARTS, file))
			.filter(({ property }) => property === 'fill' || property === 'stroke')
			.flatMap(({ file, value }) => [...value.matchAll(/var\(--([\w-]+)/g)].map(([, token]) => [file, token]))
			.filter(([, token]) => !INKS.includes(token));
		expect(found).toEqual([]);
		expect(files.length).toBeGreaterThan(10);
	});

	it('gives traces of one strip a weight or a dash of their own', () => {
		const drawn = (trace: Pick<StripTrace, 'tone' | 'dashed'>) => {
			const seen: { width: number; dash: number[] }[] = [];
			const context = {
				lineWidth: 0,
				dash: [] as number[],
				setLineDash(dash: number[]) {
					this.dash = dash;
				},
				stroke() {
					seen.push({ width: this.lineWidth, dash: this.dash });
				},
				beginPath() {},
				moveTo() {},
				lineTo() {}
			};
			drawTrace(
				context as unknown as CanvasRenderingContext2D,
				{ ...trace, levels: minMaxLevels(new Float32Array([1, 2, 3])) },
				{ x: Number, y: Number, window: [0, 2], pixels: 100 },
				'ink'
			);
			return seen[0];
		};
		const [ink, soft, dashed] = [
			drawn({ tone: 'ink' }),
			drawn({ tone: 'soft' }),
			drawn({ tone: 'ink', dashed: true })
		];
		expect(soft.width).toBeLessThan(ink.width);
		expect(ink.dash).toEqual([]);
		expect(dashed.dash.length).toBeGreaterThan(0);
	});
});
