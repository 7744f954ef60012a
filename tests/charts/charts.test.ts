import { describe, expect, it } from 'vitest';
import CumulativeCurve from '$lib/charts/CumulativeCurve.svelte';
import ObservedShare from '$lib/charts/ObservedShare.svelte';
import PlanCourse from '$lib/charts/PlanCourse.svelte';
import RateInterval from '$lib/charts/RateInterval.svelte';
import RatesByBin from '$lib/charts/RatesByBin.svelte';
import SlipsOverDistance from '$lib/charts/SlipsOverDistance.svelte';
import SmallCurve from '$lib/charts/SmallCurve.svelte';
import { createFormats } from '$lib/ui/formats';
import { svgOf } from './svgOf';

const formats = createFormats('en-GB', 'UTC');
describe('RateInterval', () => {
	it('draws limits and rate on the common scale; without an event the bar is open and has no notch', () => {
		const svg = svgOf(RateInterval, {
			label: 'Two builds',
			rows: [
				{ label: 'before', count: 12, rate: 5.61, lower: 2.9, upper: 9.8 },
				{ label: 'after', count: 0, rate: 0, lower: 0, upper: 3.76 }
			],
			scaleEnd: 10,
			formats
		});
		expect(svg).toMatchSnapshot();
		expect(svg.match(/class="rate/g)?.length).toBe(1);
		expect(svg).toContain('class="none"');
	});

	it('shows that a limit lies beyond the scale, and that nothing is known without exposure', () => {
		const svg = svgOf(RateInterval, {
			label: 'A wide and an unknown one',
			rows: [
				{ label: 'wide', count: 1, rate: 5, lower: 0.1, upper: 28 },
				{ label: 'unknown', count: 0, rate: null, lower: 0, upper: null }
			],
			scaleEnd: 10,
			formats
		});
		expect(svg).toContain('class="beyond"');
		expect(svg).toContain('class="unknown"');
	});
});

describe('ObservedShare', () => {
	it('fills the observed share of the distance', () => {
		expect(
			svgOf(ObservedShare, { id: 'a', observedM: 61_000, totalM: 100_000, label: '61 %' })
		).toMatchSnapshot();
	});

	it('fills nothing before anything was ridden', () => {
		expect(svgOf(ObservedShare, { id: 'a', observedM: 0, totalM: 0, label: 'none' })).toContain('width="0"');
	});
});

describe('SlipsOverDistance', () => {
	const lines = [
		{
			key: '1-1',
			build: 'Original',
			wheel: 'Wheel A',
			dash: 0,
			endM: 200_000,
			observed: [
				{ fromM: 0, toM: 60_000 },
				{ fromM: 60_050, toM: 90_000 },
				{ fromM: 120_000, toM: 200_000 }
			],
			observedM: 169_950,
			slips: [
				{ atM: 50_000, count: 1, eventId: 1, confirmed: true },
				{ atM: 150_000, count: 2, eventId: 2, confirmed: false }
			]
		},
		{
			key: '2-1',
			build: 'Retrofit',
			wheel: 'Wheel A',
			dash: 1,
			endM: 120_000,
			observed: [{ fromM: 0, toM: 100_000 }],
			observedM: 100_000,
			slips: []
		}
	];

	it('draws one step line a wheel and build, told apart by dash and label, with its observed stretches', () => {
		expect(svgOf(SlipsOverDistance, { lines, width: 900, formats })).toMatchSnapshot();
	});

	it('fills as much of a band as was observed', () => {
		const svg = svgOf(SlipsOverDistance, { lines, width: 900, formats });
		const filled = [...svg.matchAll(/class="seen"[^>]* d="M44,10([^"]+)V10Z"/g)].map(([, path]) => {
			let [x, area] = [44, 0];
			for (const [, y, to] of path.matchAll(/V([\d.]+)H([\d.]+)/g)) {
				area += (10 - Number(y)) * (Number(to) - x);
				x = Number(to);
			}
			return area / (10 * (x - 44));
		});
		// 169.95 of 200 km and 100 of 120 km
		expect(filled[0]).toBeCloseTo(0.84975, 2);
		expect(filled[1]).toBeCloseTo(0.83333, 2);
	});

	it('says every line in its name for a screen reader', () => {
		expect(svgOf(SlipsOverDistance, { lines, formats })).toContain(
			'Retrofit on Wheel A, none found on 100 observed km of 120 km'
		);
	});

	it('keeps every line inside on a phone', () => {
		const svg = svgOf(SlipsOverDistance, { lines, width: 340, formats });
		for (const [, x] of svg.matchAll(/<path[^>]* d="M([\d.]+)/g)) expect(Number(x)).toBeLessThanOrEqual(340);
	});
});

describe('RatesByBin', () => {
	const rate = (count: number, observedM: number, lower: number, upper: number | null) => ({
		count,
		observedM,
		ratePerHundredKm: observedM > 0 ? count / (observedM / 100_000) : null,
		lowerPerHundredKm: lower,
		upperPerHundredKm: upper
	});
	const bins = (rates: ReturnType<typeof rate>[]) =>
		svgOf(RatesByBin, {
			id: 'bins',
			label: 'Slips per 100 observed km by torque',
			bins: ['0', '8', '?'],
			axis: 'hub torque, Nm',
			series: [
				{ name: 'Old', rates },
				{ name: 'New', rates: [rate(1, 50_000, 0.1, 11.1)] }
			],
			width: 400,
			formats
		});

	it('draws limits, rates, bins without a slip and bins that nobody observed', () => {
		expect(
			bins([rate(4, 100_000, 1.1, 10.2), rate(0, 40_000, 0, 9.2), rate(0, 0, 0, null)])
		).toMatchSnapshot();
	});

	it('draws no bar where next to nothing was observed, and an arrow where a limit lies beyond the scale', () => {
		const svg = bins([rate(4, 100_000, 1.1, 10.2), rate(0, 300, 0, 1230), rate(1, 9_000, 0.3, 61.9)]);
		expect(svg.match(/class="unknown"/g)).toHaveLength(1);
		expect(svg.match(/class="beyond"/g)).toHaveLength(1);
	});
});

describe('CumulativeCurve', () => {
	it('draws each curve with its band to the end of what its wheels ran', () => {
		const svg = svgOf(CumulativeCurve, {
			label: 'Mean number of slips of one wheel',
			axis: 'km since fitting',
			curves: [
				{
					name: 'Old',
					endM: 300_000,
					points: [
						{ atM: 50_000, value: 1, lower: 0.3, upper: 3.2 },
						{ atM: 200_000, value: 2, lower: 0.9, upper: 4.4 }
					]
				},
				{ name: 'New', endM: 120_000, points: [] }
			],
			width: 400,
			formats
		});
		expect(svg).toMatchSnapshot();
	});

	it('hatches the distances at which nothing was watched, in a lane of their own for each line', () => {
		const curve = (name: string, gaps: { fromM: number; toM: number }[]) => ({
			name,
			endM: 300_000,
			points: [],
			gaps
		});
		const drawn = (gaps: { fromM: number; toM: number }[]) =>
			svgOf(CumulativeCurve, {
				label: 'Mean number of slips of one wheel',
				axis: 'km since fitting',
				curves: [curve('Old', gaps), curve('New', [])],
				width: 400,
				formats
			});
		const svg = drawn([{ fromM: 100_000, toM: 200_000 }]);
		const wide = /class="gap[^"]*" x="([\d.]+)" y="\d+" width="([\d.]+)"/.exec(svg)!;
		// the plot is 320 wide and begins at 44: a third of it
		expect(Number(wide[1])).toBeCloseTo(44 + 320 / 3, 0);
		expect(Number(wide[2])).toBeCloseTo(320 / 3, 0);
		expect(drawn([])).not.toContain('unwatched-hatch');
	});
});

describe('SmallCurve', () => {
	it('steps up at each slip, runs flat to its end, and says the number there', () => {
		const svg = svgOf(SmallCurve, {
			label: 'Mean slips',
			steps: [
				{ atM: 50_000, value: 1 },
				{ atM: 100_000, value: 2 }
			],
			endM: 200_000,
			scale: { km: 200, slips: 2 },
			formats
		});
		expect(svg).toMatchSnapshot();
		expect(svg).toContain('d="M1,42H37.5V23H74V4H147"');
		expect(svg).toContain('aria-label="Mean slips: 2.0 by 200 km"');
	});
});

describe('PlanCourse', () => {
	it('draws the slips between the line above which the plan fails and the one below which it passes', () => {
		const svg = svgOf(PlanCourse, {
			label: 'The plan goes on',
			slopePerThousandKm: 5,
			passIntercept: -1.5,
			failIntercept: 2,
			allowedAtEnd: 2,
			longestObservedM: 900_000,
			slipsAtM: [100_000, 333_333],
			observedM: 400_000,
			formats
		});
		expect(svg).toMatchSnapshot();
		expect(svg.match(/class="limit"/g)).toHaveLength(2);
	});
});

describe('names in a chart', () => {
	it('are cut where there is no room for them', () => {
		const line = {
			key: '1',
			build: 'Retrofit of the second batch with stiff springs and a ring of 72 teeth',
			wheel: 'Touring wheel of the second pair',
			dash: 0,
			endM: 90_000,
			observed: [],
			observedM: 0,
			slips: []
		};
		const svg = svgOf(SlipsOverDistance, { lines: [line], width: 340, formats });
		expect(svg).toMatch(/>Retrofit of the second batch with[^<]*…</);
		expect(svgOf(SlipsOverDistance, { lines: [line], width: 1200, formats })).toContain(
			`${line.build} · ${line.wheel}</text>`
		);
	});
});
