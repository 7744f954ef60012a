import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { linearScale, roundedScale } from '$lib/charts/linearScale';
import { plotBox } from '$lib/charts/plotBox';
import { roundTicks, ticksAcross } from '$lib/charts/roundTicks';
import PlanCourse from '$lib/charts/PlanCourse.svelte';
import { createFormats } from '$lib/ui/formats';
import { svgOf } from './svgOf';

const formats = createFormats('en-GB', 'UTC');
const labels = (ticks: readonly { label: string }[]) => ticks.map(({ label }) => label);

describe('roundTicks', () => {
	it('writes all values of an axis with the decimals of its step, so that no two read the same', () => {
		expect(labels(roundTicks(linearScale([0, 2], [100, 0]), 4, formats))).toEqual([
			'0.0',
			'0.5',
			'1.0',
			'1.5',
			'2.0'
		]);
		expect(labels(roundTicks(roundedScale([0, 0.037], [100, 0], 4), 4, formats))).toEqual([
			'0.00',
			'0.01',
			'0.02',
			'0.03',
			'0.04'
		]);
		expect(labels(roundTicks(linearScale([0, 40], [100, 0]), 4, formats))).toEqual([
			'0',
			'10',
			'20',
			'30',
			'40'
		]);
	});

	it('stands where the scale has the value, in the unit that is written', () => {
		const across = ticksAcross(linearScale([0, 1000], [44, 386]), formats, 1000);
		expect(across.map(({ at, label }) => `${label} at ${at}`)).toEqual([
			'0.0 at 44',
			'0.5 at 215',
			'1.0 at 386'
		]);
	});

	it('has more places along a wider axis, and three at least', () => {
		const places = (pixels: number) => ticksAcross(linearScale([0, 900], [0, pixels]), formats).length;
		expect(places(1200)).toBeGreaterThan(places(400));
		expect(places(60)).toBeGreaterThanOrEqual(3);
	});
});

describe('plotBox', () => {
	it('leaves room at both sides', () => {
		expect(plotBox(400, 200)).toEqual({ left: 44, right: 386, top: 14, base: 214 });
		expect(plotBox(400, 200, { left: 56, right: 22 })).toMatchObject({ left: 56, right: 378 });
	});
});

describe('ChartFrame', () => {
	it.each(['CumulativeCurve', 'PlanCourse', 'RatesByBin', 'SlipsOverDistance', 'TorqueCurve', 'WearLine'])(
		'holds the axes of %s, which draws none of its own',
		(chart) => {
			const source = readFileSync(
				fileURLToPath(new URL(`../../src/lib/charts/${chart}.svelte`, import.meta.url)),
				'utf8'
			);
			expect(source).toContain('<ChartFrame');
			expect(source).not.toMatch(/<svg|\.ticks\(|font-size: 12px|text-anchor/);
		}
	);

	it('counts what is counted by whole numbers', () => {
		const svg = svgOf(PlanCourse, {
			label: 'The plan goes on',
			slopePerThousandKm: 5,
			passIntercept: -1.5,
			failIntercept: 2,
			allowedAtEnd: 0,
			longestObservedM: 900_000,
			slipsAtM: [],
			observedM: 400_000,
			formats
		});
		const values = [...svg.matchAll(/class="end" x="38"[^>]*>([^<]+)</g)].map(([, value]) => value);
		expect(values).toEqual(['0', '1', '2']);
	});
});
