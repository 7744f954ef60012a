import { describe, expect, it } from 'vitest';
import { risingSteps } from '$lib/charts/risingSteps';
import TorqueCurve from '$lib/charts/TorqueCurve.svelte';
import { createFormats } from '$lib/ui/formats';
import { svgOf } from './svgOf';

const formats = createFormats('en-GB', 'UTC');

describe('TorqueCurve', () => {
	const bin = (fromNm: number, toNm: number | null, neverFalling: number | null) => ({
		fromNm,
		toNm,
		neverFalling
	});
	const curves = [
		{
			name: 'Old',
			points: [bin(0, 20, 0.5), bin(20, 40, 2), bin(40, 60, null), bin(60, null, 6)],
			smooth: [
				{ torqueNm: 10, value: 0.4, lower: 0.2, upper: 0.8 },
				{ torqueNm: 60, value: 5, lower: 2, upper: 30 }
			]
		},
		{ name: 'New', points: [bin(0, 20, 0), bin(20, 40, 0.1)], smooth: [] }
	];

	it('draws steps that break where nothing was ridden, the smooth curve with its band cut at the top, numbers', () => {
		const svg = svgOf(TorqueCurve, { label: 'Slips against torque', curves, width: 500, formats });
		expect(svg).toMatchSnapshot();
		expect(svg.match(/class="band/g)?.length).toBe(1);
	});

	it('stands each number where a line of its build ends', () => {
		const svg = svgOf(TorqueCurve, { label: 'Slips against torque', curves, width: 500, formats });
		const steps = [...svg.matchAll(/class="steps"[^>]* d="[^"]*?([\d.]+)H([\d.]+)"/g)].map(
			([, y, x]) => `${Number(x) + 6}, ${Number(y) + 4}`
		);
		const numbers = [...svg.matchAll(/class="number over" x="([\d.]+)" y="([\d.]+)"/g)].map(
			([, x, y]) => `${x}, ${y}`
		);
		expect(numbers).toEqual(steps);
		expect(numbers).toHaveLength(2);
	});

	it('gives the open bin an end and leaves out bins without a value', () => {
		expect(risingSteps(curves[0].points)).toEqual([
			{ fromNm: 0, toNm: 20, value: 0.5 },
			{ fromNm: 20, toNm: 40, value: 2 },
			{ fromNm: 60, toNm: 75, value: 6 }
		]);
	});
});
